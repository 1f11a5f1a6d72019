package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.page.Caution;
import limberboard.trace.CautionsRead;

/** Cautions for a person at a terminal: each in the form in which it stands, none left out. */
final class CautionsText {
  private final PrintWriter out;

  CautionsText(PrintWriter out) {
    this.out = out;
  }

  /** All of them, an emergency before the others. */
  void print(List<WorkCaution> cautions, CautionsRead read) {
    List<WorkCaution> first = cautions.stream().filter(WorkCaution::emergency).toList();
    first.forEach(caution -> print(caution, read));
    cautions.stream()
        .filter(caution -> !caution.emergency())
        .forEach(caution -> print(caution, read));
    if (cautions.stream().anyMatch(caution -> !isWhole(caution, read))) {
      out.println();
    }
  }

  private static boolean isWhole(WorkCaution caution, CautionsRead read) {
    CautionsRead.Form form = read.form(caution);
    return form == CautionsRead.Form.WHOLE || form == CautionsRead.Form.QUESTION;
  }

  private void print(WorkCaution caution, CautionsRead read) {
    switch (read.form(caution)) {
      case WHOLE, QUESTION -> whole(caution, !read.answer(caution).orElse(false));
      case SHORT -> out.println(named(caution) + ". " + caution.danger() + " " + caution.rule());
      case FOLDED -> out.println(named(caution) + " (" + read.why(caution) + ")");
    }
  }

  /** The whole text of what stands only in short, once; nothing where all stand in full. */
  void inFull(List<WorkCaution> cautions) {
    List<WorkCaution> others = WorkCautions.toTellInFull(cautions);
    if (!others.isEmpty()) {
      out.println();
      out.println("The cautions in full");
      out.println();
      others.forEach(this::whole);
    }
  }

  /** One in full. */
  void whole(WorkCaution caution) {
    whole(caution, false);
  }

  private void whole(WorkCaution caution, boolean asks) {
    Caution details = caution.page().details();
    Optional<String> question = caution.question().filter(asked -> asks);
    question.ifPresent(asked -> out.println(asked + " If so, or if you cannot tell:"));
    out.println(named(caution));
    out.println("  " + details.danger());
    details.act().forEach(act -> out.println("  - " + act));
    if (!details.seek().isEmpty()) {
      out.println("  " + details.seek());
    }
    out.println();
  }

  private static String named(WorkCaution caution) {
    String because = caution.because().isEmpty() ? "" : " (" + caution.because() + ")";
    return "CAUTION: " + caution.title() + because;
  }
}
