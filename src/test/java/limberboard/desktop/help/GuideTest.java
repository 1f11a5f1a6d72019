package limberboard.desktop.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.print.page.CutPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuideTest {
  private final Guide guide = Guide.of(GuideTest::book);

  private static Optional<String> book(String name) {
    try {
      return Optional.of(Files.readString(Path.of("docs", name + ".md")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @CsvSource({"trace,Trace", "pages,Pages", "upkeep,Upkeep", "boats,Boats", "help,User guide"})
  void everyPlaceHasItsPart(String place, String title) {
    assertThat(guide.about(place).map(Guide.Part::title)).contains(title);
  }

  @Test
  void everyPartCanBeShown() {
    assertThat(guide.parts()).hasSizeGreaterThan(20);
    for (Guide.Part part : guide.parts()) {
      CutPage page = guide.page(part);
      assertThat(page.title()).isEqualTo(part.title());
    }
    assertThat(guide.parts().stream().map(Guide.Part::id)).doesNotHaveDuplicates();
  }

  @Test
  void linksOfTheGuideLeadToItsOtherBooks() {
    Guide.Part terminal = guide.part("user-guide--the-terminal").orElseThrow();
    assertThat(guide.page(terminal).toString()).contains("terminal");
    assertThat(guide.part("terminal")).isPresent();
  }

  @Test
  void whatIsMissingIsLeftOut() {
    assertThat(Guide.of(name -> Optional.empty()).parts()).isEmpty();
    assertThat(Guide.of(name -> Optional.empty()).about("trace")).isEmpty();
  }
}
