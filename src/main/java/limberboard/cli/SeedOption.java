package limberboard.cli;

import picocli.CommandLine.Option;

/** The option {@code --seed} of commands that draw by chance. */
final class SeedOption {
  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What chance comes from, a whole number from 0; 0 if not given.")
  private long seed;

  /** The seed, 0 or more. */
  long value() {
    if (seed < 0) {
      throw new Failure(ExitCode.USAGE, "--seed is a whole number from 0");
    }
    return seed;
  }
}
