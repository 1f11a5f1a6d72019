package limberboard.library.file;

import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Problem;

/**
 * The net that each file is read in: what nobody foresaw in a file becomes a problem of that file,
 * and all others are read. A file that would exhaust the memory is kept out by {@link Limits}.
 */
public final class FileNet {
  private FileNet() {}

  /**
   * Reads a file.
   *
   * @param file what problems call it
   * @param read reads it
   * @param otherwise what stands for it when reading fails
   */
  public static <T> T read(String file, Supplier<T> read, Function<Problem, T> otherwise) {
    try {
      return read.get();
    } catch (RuntimeException | StackOverflowError e) {
      return otherwise.apply(
          Problem.error(
              file,
              0,
              "",
              "cannot be read, for a reason that was not foreseen ("
                  + e.getClass().getSimpleName()
                  + ")",
              "take out what was changed last; everything else is read without this file"));
    }
  }
}
