package limberboard.proofread;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.header.HeaderText;
import limberboard.library.page.Page;
import limberboard.proofread.mark.ReadMarks;
import limberboard.proofread.mark.ReadingAge;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a page counts as read. */
class ReadMarksTest {
  private static final String PAGE = "---\ntitle: Knots\n---\nA bend joins two ropes.\n";
  @TempDir Path folder;
  private ProofreadPages pages;

  @BeforeEach
  void makePages() {
    pages = new ProofreadPages(folder);
  }

  private static String marked(String text) throws Exception {
    String header = HeaderText.part(text).orElseThrow().header();
    return text.replace(header, ReadMarks.marked(text, LocalDate.of(2026, 5, 1), "a rigger"));
  }

  private Optional<ReadingAge> unread(String text) {
    return unread(text, LocalDate.of(2026, 5, 2));
  }

  private Optional<ReadingAge> unread(String text, LocalDate today) {
    pages.workspace().write("articles/topics/knots.md", text);
    Page<?> page = pages.workspace().library().page("knots").orElseThrow();
    return ReadingAge.of(page, () -> text, today, ReadingAge.USUAL);
  }

  @Test
  void aPageIsReadUntilItChanges() throws Exception {
    assertThat(unread(PAGE).orElseThrow().line())
        .isEqualTo("articles/topics/knots.md: has never been read in full.");
    String read = marked(PAGE);
    assertThat(read).contains("read: {on: 2026-05-01, by: \"a rigger\", of: ");
    assertThat(unread(read)).isEmpty();
    assertThat(unread(read.replace("two", "three")).orElseThrow().line())
        .contains("has changed since it was read in full", "a rigger");
    assertThat(unread(read.replace("Knots", "Bends"))).isPresent();
  }

  @Test
  void answersAndBlanksAtLineEndsAreNoChange() throws Exception {
    String read = marked(PAGE);
    String answered = read.replace("read:", "answered: [{rule: minutes, why: so}]\nread:");
    assertThat(unread(answered)).isEmpty();
    assertThat(unread(read.replace("ropes.\n", "ropes.  \n\n"))).isEmpty();
  }

  @Test
  void aReadingOfLongAgoDoesNotHold() throws Exception {
    assertThat(unread(marked(PAGE), LocalDate.of(2028, 4, 30))).isEmpty();
    assertThat(unread(marked(PAGE), LocalDate.of(2028, 5, 1)).orElseThrow().because())
        .isEqualTo(ReadingAge.Because.LONG_AGO);
  }

  @Test
  void aReadingNotedByHandHoldsWithoutADigest() {
    String noted = PAGE.replace("---\nA", "read: {on: 2026-05-01, by: a rigger}\n---\nA");
    assertThat(unread(noted.replace("two", "three"))).isEmpty();
  }

  @Test
  void readingAgainReplacesTheNote() throws Exception {
    String changed = marked(PAGE).replace("two", "three");
    String again = marked(changed);
    assertThat(again.split("read:", -1)).hasSize(2);
    assertThat(unread(again)).isEmpty();
  }
}
