package limberboard.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.header.HeaderText;
import limberboard.writing.PageText.Stretch;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class PageTextTest {
  @Provide
  Arbitrary<String> pages() {
    Arbitrary<String> line =
        Arbitraries.of("---", "--- ", "----", "title: A", "", " ---", "text", "- a", "…", "a: é");
    Arbitrary<String> end = Arbitraries.of("\n", "\n", "\r\n");
    return net.jqwik.api.Combinators.combine(
            line.list().ofMaxSize(8),
            end.list().ofSize(8),
            Arbitraries.of("", "\uFEFF"),
            Arbitraries.of(true, false))
        .as(PageTextTest::text);
  }

  private static String text(List<String> lines, List<String> ends, String mark, boolean open) {
    StringBuilder text = new StringBuilder(mark);
    for (int i = 0; i < lines.size(); i++) {
      boolean last = i == lines.size() - 1;
      text.append(lines.get(i)).append(last && open ? "" : ends.get(i));
    }
    return text.toString();
  }

  @Property
  void bytesStayAsTheyAre(@ForAll("pages") String text) throws CharacterCodingException {
    PageText page = new PageText(text);
    assertThat(PageText.of(page.bytes())).isEqualTo(page);
    assertThat(page.edited(page.plain())).isEqualTo(page);
  }

  @Property
  void isPartedAsTheReaderPartsIt(@ForAll("pages") String text) {
    PageText page = new PageText(text);
    Optional<HeaderText> read = HeaderText.part(page.plain());
    assertThat(page.header().isPresent()).isEqualTo(read.isPresent());
    read.ifPresent(
        parts -> {
          assertThat(plain(page, page.header().orElseThrow())).isEqualTo(parts.header());
          assertThat(plain(page, page.body())).isEqualTo(parts.body());
        });
  }

  private static String plain(PageText page, Stretch stretch) {
    return stretch.of(page.text()).replace("\r\n", "\n");
  }

  @Property
  void whatWasTypedStandsThereAndOtherLinesKeepTheirEnds(
      @ForAll("pages") String text, @ForAll("pages") String typed) {
    PageText page = new PageText(text);
    String plain = new PageText(typed).plain();
    PageText edited = page.edited(plain);
    assertThat(edited.plain()).isEqualTo(plain);
    assertThat(edited.text().startsWith("\uFEFF")).isEqualTo(text.startsWith("\uFEFF"));
    assertThat(page.edited("x\n" + page.plain()).text()).endsWith(withoutMark(text));
  }

  private static String withoutMark(String text) {
    return text.replace("\uFEFF", "");
  }

  @Test
  void newLinesGetTheUsualEnd() {
    PageText page = new PageText("one\r\ntwo\nthree\r\n");
    assertThat(page.edited("one\ntwo\nmore\nthree\n").text())
        .isEqualTo("one\r\ntwo\nmore\r\nthree\r\n");
    assertThat(new PageText("a\nb").edited("a\nb\nc").text()).isEqualTo("a\nb\nc");
    assertThat(
            List.of("", "a", "a\n", "a\r\n").stream()
                .map(text -> new PageText(text).lineEnd())
                .collect(Collectors.joining("|")))
        .isEqualTo("\n|\n|\n|\r\n");
  }

  @Test
  void whatIsNotUtf8IsRefused() {
    assertThatThrownBy(() -> PageText.of(new byte[] {(byte) 0xFF, 'a'}))
        .isInstanceOf(CharacterCodingException.class);
  }
}
