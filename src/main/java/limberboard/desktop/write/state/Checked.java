package limberboard.desktop.write.state;

import java.util.List;
import java.util.Optional;
import limberboard.library.problem.Problem;
import limberboard.writing.PageText;
import limberboard.writing.form.FormField;
import limberboard.writing.form.HeaderForm;
import limberboard.writing.typing.PageTyping;

/**
 * What a text said when it was looked at.
 *
 * @param text the text
 * @param read the page, what is wrong with it, and the library with it
 * @param form its header as a form; empty while its header cannot be read
 * @param fields the fields of the form
 */
public record Checked(
    PageText text, PageTyping.Read read, Optional<HeaderForm> form, List<FormField> fields) {
  /** Copies the list. */
  public Checked {
    fields = List.copyOf(fields);
  }

  /** How many problems keep something from working. */
  public long errors() {
    return read.problems().stream()
        .filter(each -> each.problem().severity() == Problem.Severity.ERROR)
        .count();
  }
}
