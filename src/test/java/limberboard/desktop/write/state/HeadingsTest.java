package limberboard.desktop.write.state;

import static org.assertj.core.api.Assertions.assertThat;

import limberboard.writing.PageText;
import org.junit.jupiter.api.Test;

/** Where the caret comes to stand for a heading that was read. */
class HeadingsTest {
  private static final PageText PAGE =
      new PageText(
          "\uFEFF---\r\n"
              + "# remark\r\n"
              + "title: X\r\n"
              + "---\r\n"
              + "First.\r\n\r\n"
              + "## Take  *it* off ##\r\n"
              + "More.\r\n");

  @Test
  void aHeadingIsFoundByItsWords() {
    assertThat(PAGE.plain().substring(Headings.find(PAGE, "Take it off"))).startsWith("## Take");
  }

  @Test
  void whatIsNoHeadingOfTheTextLeadsToItsBeginning() {
    assertThat(PAGE.plain().substring(Headings.find(PAGE, "Tools"))).startsWith("First.");
    assertThat(PAGE.plain().substring(Headings.find(PAGE, "remark"))).startsWith("First.");
  }

  @Test
  void theHeadingAboveAPlaceIsTold() {
    assertThat(Headings.above(PAGE, PAGE.plain().indexOf("More"))).contains("take it off");
    assertThat(Headings.above(PAGE, PAGE.plain().indexOf("First"))).isEmpty();
  }
}
