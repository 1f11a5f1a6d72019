package limberboard.drill.paper;

import java.util.List;
import limberboard.drill.Drill;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.paper.PaperPack.Numbered;
import limberboard.library.page.Model.Access;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.trace.FaultCause;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** Words that a sheet and its key share. Stateless. */
final class PaperWords {
  private PaperWords() {}

  /** What a number stands for. */
  static String what(Numbered each) {
    return each.check().map(check -> check.ask()).orElseGet(() -> mend(each.cause().orElseThrow()));
  }

  private static String mend(FaultCause cause) {
    return cause.title()
        + ": "
        + Sentences.lowered(cause.mendTitle())
        + (cause.mendedByOwner() ? "" : " (" + SkillWords.whose(cause.mendSkill()) + ")");
  }

  /** What it takes. */
  static String minutes(Numbered each) {
    return Minutes.words(
        each.check().map(check -> check.minutes()).orElseGet(() -> mendMinutes(each)));
  }

  private static double mendMinutes(Numbered each) {
    return each.cause().orElseThrow().mendMinutes();
  }

  /** What must be opened for it. */
  static List<Access> access(Numbered each) {
    return each.check()
        .map(check -> check.access())
        .orElseGet(() -> each.cause().orElseThrow().mendAccess());
  }

  /** What the trainer answers when a number is said. */
  static String answer(Drill drill, Numbered each) {
    if (each.check().isPresent()) {
      return drill
          .answer(each.check().get())
          .map(Sentences::spoken)
          .map(Sentences::capital)
          .orElse("It can't be told");
    }
    FaultCause cause = each.cause().orElseThrow();
    if (!cause.mendedByOwner()) {
      return "Not yours: it is work " + SkillWords.whose(cause.mendSkill());
    }
    return drill.isCuredBy(cause) ? "The fault is gone" : "The fault is still there";
  }

  /** A step by its number: {@code 4}, {@code yard, 9}; nothing for the steps of cautions. */
  static String numbered(DrillStep step, List<Numbered> numbers) {
    if (step instanceof Ask || step instanceof Mend) {
      return numbers.stream()
          .filter(each -> isSame(each, step))
          .map(each -> Integer.toString(each.number()))
          .findFirst()
          .orElse("");
    } else if (step instanceof HandOver yard) {
      return "yard"
          + yard.cause()
              .map(Named::cause)
              .map(cause -> ", " + numbered(new Mend(cause, 0), numbers))
              .orElse("");
    } else if (step instanceof DrillStep.Secure) {
      return "make safe";
    }
    return "";
  }

  private static boolean isSame(Numbered each, DrillStep step) {
    return step instanceof Ask ask
        ? each.check().map(check -> check.id().equals(ask.check())).orElse(false)
        : each.cause().map(cause -> cause.id().equals(((Mend) step).cause())).orElse(false);
  }

  /** A table's row in plain text. */
  static List<List<Inline>> row(String... cells) {
    return List.of(cells).stream().map(Inline::text).toList();
  }

  /** A table whose first column stands to the right. */
  static Block table(List<String> head, List<List<List<Inline>>> rows) {
    List<Block.Side> sides =
        head.stream()
            .map(each -> each.equals(head.get(0)) ? Block.Side.RIGHT : Block.Side.LEFT)
            .toList();
    return new Block.Table(sides, head.stream().map(Inline::text).toList(), rows);
  }
}
