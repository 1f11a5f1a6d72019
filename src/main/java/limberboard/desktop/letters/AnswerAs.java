package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.page.Wording;
import limberboard.library.value.LetterPart;
import limberboard.library.value.Word;

/**
 * What kind of answer a letter gets.
 *
 * @param kind the kind
 * @param matter for no fault: what the letter is about, as a wording's {@code when} has it, or
 *     empty
 */
record AnswerAs(Kind kind, String matter) {
  /** The kinds of answers. */
  enum Kind implements Word {
    /** The faults that are ticked are traced and answered. */
    FAULTS("The faults ticked below"),
    /** It is asked which of the symptoms it is. */
    WHICH_SYMPTOM("Ask which of these it is"),
    /** A fault for which the library has no page. */
    NOT_COVERED("A fault without a page"),
    /** No fault at all. */
    NO_FAULT("No fault"),
    /** Nothing is to be answered. */
    NOTHING("Nothing to answer");

    private final String title;

    Kind(String title) {
      this.title = title;
    }
  }

  static AnswerAs of(Kind kind) {
    return new AnswerAs(kind, "");
  }

  /** How it is kept. */
  String written() {
    return matter.isEmpty() ? kind.word() : kind.word() + " " + matter;
  }

  /** What a person reads. */
  String words() {
    return matter.isEmpty() ? kind.title : kind.title + ": " + matter;
  }

  /** What was kept; empty when it is none of these. */
  static Optional<AnswerAs> read(String written) {
    String[] parts = written.split(" ", 2);
    for (Kind kind : Kind.values()) {
      if (kind.word().equals(parts[0])) {
        return Optional.of(new AnswerAs(kind, parts.length > 1 ? parts[1] : ""));
      }
    }
    return Optional.empty();
  }

  /** All that there are, with the matters for which the library has words. */
  static List<AnswerAs> all(Library library) {
    List<AnswerAs> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      all.add(of(kind));
      if (kind == Kind.NO_FAULT) {
        matters(library, LetterPart.NO_FAULT)
            .forEach(matter -> all.add(new AnswerAs(Kind.NO_FAULT, matter)));
      }
    }
    return all;
  }

  /** The matters for which the library has words at a place of letters. */
  static List<String> matters(Library library, LetterPart part) {
    return library.all(Wording.class).stream()
        .filter(page -> page.details().part() == part)
        .flatMap(page -> page.details().when().stream())
        .distinct()
        .sorted()
        .toList();
  }
}
