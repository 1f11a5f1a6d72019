package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.words.PerCent;

/**
 * What was recognised in a letter, in words.
 *
 * @param out where to
 * @param library for the titles
 */
record ReplyOutput(PrintWriter out, Library library) {

  void print(ReplyView view) {
    view.urgentWhy()
        .ifPresent(
            why ->
                out.println(
                    "URGENT: " + why.what() + " (“" + why.words().written().strip() + "”)"));
    out.println(
        "Boat: "
            + view.boat().map(boat -> boat + ", by " + view.boatWhy()).orElse("not known")
            + view.model().map(model -> "; model " + model).orElse(""));
    if (view.kind().equals("other")) {
      out.println("No fault is told of.");
    } else if (view.symptoms().isEmpty()) {
      out.println("A fault is told of that the library does not cover.");
    }
    for (ReplyView.SuspectView suspect : view.symptoms()) {
      out.println(
          title(suspect.id())
              + ", estimate "
              + PerCent.words(suspect.chance())
              + ": "
              + led(suspect));
      Map<String, String> given = view.answers().getOrDefault(suspect.id(), Map.of());
      given.forEach((check, answer) -> out.println("  told already: " + check + " = " + answer));
      view.next().stream().filter(next -> next.symptom().equals(suspect.id())).forEach(this::next);
    }
    conversation(view.conversation());
    view.remarks().forEach(out::println);
    view.draft()
        .ifPresentOrElse(
            draft -> out.print("\nDraft of an answer:\n\n" + draft),
            () -> out.println("Nothing is to be answered."));
  }

  private void conversation(ReplyView.ConversationView conversation) {
    if (!conversation.letters().isEmpty()) {
      out.println("Goes on from: " + String.join(", ", conversation.letters()));
      conversation.told().forEach(this::told);
    }
  }

  private void told(ReplyView.ToldView told) {
    String said = told.check() + " = " + told.answer().orElse("cannot tell");
    told.letter().ifPresent(letter -> out.println("  told in " + letter + ": " + said));
    if (told.letter().isEmpty()) {
      told.before().ifPresent(was -> out.println("  told otherwise now: " + said + ", not " + was));
    }
  }

  private void next(ReplyView.NextView next) {
    Stream.concat(next.first().stream(), next.step().cautions().stream())
        .distinct()
        .forEach(caution -> out.println("  Caution: " + caution.brief() + " " + caution.rule()));
    next.step().makeSafe().ifPresent(safe -> out.println("  first: " + safe));
    out.println("  next: " + next.step().text());
  }

  private static String led(ReplyView.SuspectView suspect) {
    List<String> words = suspect.words().stream().map(ReplyView.WordsView::written).toList();
    return words.stream().collect(Collectors.joining("”, “", "“", "”"));
  }

  private String title(String symptom) {
    return library.symptom(symptom).map(Page::title).orElse(symptom);
  }
}
