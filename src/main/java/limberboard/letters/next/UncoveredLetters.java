package limberboard.letters.next;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.letters.inbox.LetterFile;
import limberboard.letters.inbox.LetterFolder;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;

/**
 * The letters of a workspace, apart by whether pages cover them.
 *
 * @param uncovered those that tell of a fault that no page covers
 * @param others the texts of the others
 */
public record UncoveredLetters(List<NamedText> uncovered, List<String> others) {
  /** The kind of answer to a letter for whose fault there is no page, as it is noted. */
  public static final String NOT_COVERED = "not-covered";

  /** Copies the lists. */
  public UncoveredLetters {
    uncovered = List.copyOf(uncovered);
    others = List.copyOf(others);
  }

  /**
   * Recognises all letters of a folder; one that cannot be read is left out.
   *
   * @throws IOException when the folder cannot be read
   */
  public static UncoveredLetters of(LetterFolder folder, Recogniser recogniser) throws IOException {
    List<NamedText> uncovered = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (LetterFile file : folder.list()) {
      Optional<Letter> letter = letter(folder, file.name());
      if (letter.isPresent()) {
        NamedText text = NamedText.of(file.name(), letter.get());
        LetterSaid said =
            file.noted().isPresent() ? folder.note(file.name()).note().said() : LetterSaid.NOTHING;
        if (isUncovered(letter.get(), recogniser.recognise(letter.get()), said)) {
          uncovered.add(text);
        } else {
          others.add(text.text());
        }
      }
    }
    return new UncoveredLetters(uncovered, others);
  }

  /**
   * Reads letters whose recognition is known already.
   *
   * @param names those that tell of a fault that no page covers; the others are read to compare
   * @param compared at most so many of the others are read
   * @throws IOException when the folder cannot be read
   */
  public static UncoveredLetters named(LetterFolder folder, List<String> names, int compared)
      throws IOException {
    List<NamedText> uncovered = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (LetterFile file : folder.list()) {
      boolean wanted = names.contains(file.name());
      if (wanted || others.size() < compared) {
        letter(folder, file.name())
            .map(letter -> NamedText.of(file.name(), letter))
            .ifPresent(
                text -> {
                  if (wanted) {
                    uncovered.add(text);
                  } else {
                    others.add(text.text());
                  }
                });
      }
    }
    return new UncoveredLetters(uncovered, others);
  }

  private static Optional<Letter> letter(LetterFolder folder, String name) {
    try {
      return Optional.of(folder.read(name));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** What a person said counts; otherwise what was recognised. */
  private static boolean isUncovered(Letter letter, Recognition seen, LetterSaid said) {
    if (said.about().isPresent()) {
      return said.about().get().equals(NOT_COVERED);
    }
    return said.symptoms().map(List::isEmpty).orElse(seen.symptoms().isEmpty())
        && seen.fault()
        && !letter.head().automatic();
  }
}
