package limberboard.desktop.write.symptom;

import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.writing.symptom.SymptomTable;
import limberboard.writing.symptom.TableCause;
import limberboard.writing.symptom.TableCheck;

/**
 * What the cells of a table say: as they are shown, as they are edited, and what they are about.
 *
 * @param table the table
 */
record CellWords(SymptomTable table) {
  /** As it is shown; a prompt where nothing is said yet. */
  String shown(TableCell cell) {
    if (cell instanceof TableCell.Word word) {
      return said(word).map(CellWords::spoken).orElseGet(() -> implied(word));
    } else if (cell instanceof TableCell.Answer answer) {
      return isThere(answer) ? Sentences.spoken(edited(answer)) : "+ answer";
    } else if (cell instanceof TableCell.CheckMinutes) {
      String minutes = edited(cell);
      return minutes.isEmpty() ? "how long?" : minutes + " min";
    } else if (cell instanceof TableCell.NewCause) {
      return "+ Cause";
    } else if (cell instanceof TableCell.NewCheck) {
      return "+ Check";
    } else if (cell instanceof TableCell.Zones) {
      return edited(cell).isEmpty()
          ? "Where on the boat is it noticed?"
          : "Noticed at: " + Sentences.spoken(edited(cell));
    } else if (cell instanceof TableCell.Caption caption) {
      return caption.words();
    } else if (cell instanceof TableCell.Mend) {
      return edited(cell).isEmpty() ? "which page?" : edited(cell);
    }
    String text = edited(cell);
    return text.isEmpty() ? (cell instanceof TableCell.How ? "how?" : "…") : text;
  }

  /** Whether a cell says something. */
  boolean isSaid(TableCell cell) {
    return cell instanceof TableCell.Caption
        || (cell instanceof TableCell.Word word ? said(word).isPresent() : !edited(cell).isEmpty());
  }

  boolean isThere(TableCell.Answer answer) {
    return answer.place() < table.checks().get(answer.check()).answers().size();
  }

  /** As it stands in the header, to be edited. */
  String edited(TableCell cell) {
    if (cell instanceof TableCell.PageTitle) {
      return table.title();
    } else if (cell instanceof TableCell.Zones) {
      return String.join(", ", table.zones());
    } else if (cell instanceof TableCell.Ask ask) {
      return check(ask.check()).ask();
    } else if (cell instanceof TableCell.How how) {
      return check(how.check()).how();
    } else if (cell instanceof TableCell.CheckMinutes minutes) {
      return check(minutes.check()).minutes();
    } else if (cell instanceof TableCell.Answer answer) {
      return isThere(answer) ? check(answer.check()).answers().get(answer.place()) : "";
    } else if (cell instanceof TableCell.CauseTitle cause) {
      return cause(cause.cause()).title();
    } else if (cell instanceof TableCell.Weight weight) {
      return cause(weight.cause()).weight();
    } else if (cell instanceof TableCell.Mend mend) {
      return cause(mend.cause()).mend();
    } else if (cell instanceof TableCell.Word word) {
      return said(word).map(CellWords::spoken).orElse("");
    }
    return "";
  }

  private TableCheck check(int number) {
    return table.checks().get(number);
  }

  private TableCause cause(int number) {
    return table.causes().get(number);
  }

  private String id(TableCell.Word word) {
    return word.cause() == TableCell.Word.OTHERS ? Check.OTHERS : cause(word.cause()).id();
  }

  private Optional<String> said(TableCell.Word word) {
    TableCheck check = check(word.check());
    return check.likelihood(check.answers().get(word.place()), id(word));
  }

  /** A word without its hyphen, a number as a per cent. */
  private static String spoken(String likelihood) {
    return value(likelihood).isPresent() && !Likelihood.scale().containsKey(likelihood)
        ? PerCent.words(value(likelihood).getAsDouble())
        : Sentences.spoken(likelihood);
  }

  private static OptionalDouble value(String likelihood) {
    try {
      return OptionalDouble.of(Likelihood.parse(likelihood).value());
    } catch (IllegalArgumentException e) {
      return OptionalDouble.empty();
    }
  }

  /** Whether the check says something of the cause, or of all others. */
  private boolean saysOf(TableCell.Word word) {
    TableCheck check = check(word.check());
    return check.answers().stream()
        .anyMatch(
            answer ->
                check.likelihood(answer, id(word)).isPresent()
                    || check.likelihood(answer, Check.OTHERS).isPresent());
  }

  /** How likely a cell makes its answer, 0 to 1, said or not; empty where it cannot be told. */
  OptionalDouble chance(TableCell.Word word) {
    TableCheck check = check(word.check());
    boolean named =
        check.answers().stream().anyMatch(answer -> check.likelihood(answer, id(word)).isPresent());
    String cause = named ? id(word) : Check.OTHERS;
    double[] shares =
        Likelihood.shares(
            check.answers().stream()
                .map(answer -> check.likelihood(answer, cause).map(CellWords::value))
                .map(value -> value.orElse(OptionalDouble.empty()))
                .toList());
    return shares.length > word.place()
        ? OptionalDouble.of(shares[word.place()])
        : OptionalDouble.empty();
  }

  /**
   * What follows where nobody has said it: what the other answers leave, or what others get;
   * nothing where the check says nothing of the cause.
   */
  private String implied(TableCell.Word word) {
    OptionalDouble chance = saysOf(word) ? chance(word) : OptionalDouble.empty();
    return chance.isPresent() ? PerCent.words(chance.getAsDouble()) : "";
  }

  /** What a cell is about, in a line. */
  String about(TableCell cell) {
    if (cell instanceof TableCell.Word word) {
      TableCheck check = check(word.check());
      String cause =
          word.cause() == TableCell.Word.OTHERS
              ? "one of all other causes"
              : Sentences.quoted(cause(word.cause()).title());
      return Sentences.quoted(Sentences.spoken(check.answers().get(word.place())))
          + " to "
          + Sentences.quoted(check.ask())
          + " when it is "
          + cause;
    } else if (cell instanceof TableCell.Weight weight) {
      return "How common is it: " + cause(weight.cause()).title();
    } else if (cell instanceof TableCell.Mend mend) {
      return "What mends it: " + cause(mend.cause()).title();
    } else if (cell instanceof TableCell.How how) {
      return "How it is done: " + check(how.check()).ask();
    } else if (cell instanceof TableCell.CheckMinutes minutes) {
      return "How many minutes it takes: " + check(minutes.check()).ask();
    } else if (cell instanceof TableCell.Answer answer) {
      return "An answer to: " + check(answer.check()).ask();
    } else if (cell instanceof TableCell.CauseTitle) {
      return "A cause";
    } else if (cell instanceof TableCell.Ask) {
      return "What the check asks";
    } else if (cell instanceof TableCell.PageTitle) {
      return "What the page is called";
    } else if (cell instanceof TableCell.Zones) {
      return "Where on the boat it is noticed";
    }
    return cell instanceof TableCell.NewCheck ? "A further check" : "A further cause";
  }

  /** What can be typed at a cell, in a line. */
  String keys(TableCell cell) {
    if (cell instanceof TableCell.Word) {
      return "0 never … 5 even … 9 almost always, a always; Enter lists the words, Delete clears";
    } else if (cell instanceof TableCell.Weight weight) {
      double share = table.share(cause(weight.cause()));
      return "1 to 9, or Enter for another number. "
          + (share > 0
              ? PerCent.words(share) + " of all weights: the workshop\u2019s estimate"
              : "");
    } else if (cell instanceof TableCell.CauseTitle || cell instanceof TableCell.Ask) {
      return "Enter changes it, Insert adds one, Delete takes it out with all it says";
    } else if (cell instanceof TableCell.Answer) {
      return "Enter changes it, Insert adds an answer, Delete takes it out";
    } else if (cell instanceof TableCell.NewCause || cell instanceof TableCell.NewCheck) {
      return "Type it, then Enter";
    }
    return "Type it, or Enter to change it";
  }
}
