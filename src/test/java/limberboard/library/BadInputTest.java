package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.page.Page;
import limberboard.library.picture.PictureSafety;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that no example can show: huge, binary, nested without end. Each gives one problem. */
class BadInputTest {
  private static final long FIFTY_MEGABYTES = 50L * 1024 * 1024;

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write("articles/topics/good.md", "---\ntitle: A good page\n---\n");
  }

  @Test
  void aPageOfFiftyMegabytesIsNotRead() throws IOException {
    Path huge = workspace.write("articles/topics/huge.md", "---\ntitle: Huge\n---\n");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(FIFTY_MEGABYTES);
    }
    assertThat(theOnlyProblem())
        .isEqualTo("articles/topics/huge.md: is 52428800 bytes long; keep it under 1000000 bytes");
  }

  @Test
  void aBinaryFileIsNoPage() throws IOException {
    Files.write(folder.resolve("articles/topics/binary.md"), new byte[] {1, 0, 2, 0});
    assertThat(theOnlyProblem()).contains("binary.md: is not text");
  }

  @Test
  void aFileInAnotherEncodingIsNoPage() throws IOException {
    Files.write(
        folder.resolve("articles/topics/latin.md"),
        new byte[] {'-', '-', '-', '\n', (byte) 0xE9, '\n'});
    assertThat(theOnlyProblem()).contains("latin.md: is not UTF-8 text; save it as UTF-8");
  }

  @Test
  void aHeaderNestedWithoutEndIsRefused() {
    workspace.write(
        "articles/topics/deep.md", "---\ntitle: " + "[".repeat(5000) + "\n---\nText.\n");
    assertThat(theOnlyProblem())
        .contains("deep.md:2: has more than 30 lists and mappings within one another");
  }

  @Test
  void aHeaderThatMultipliesItselfIsRefused() {
    StringBuilder header = new StringBuilder("title: Bomb\nsaid-as: &a0 [x]\n");
    for (int i = 1; i < 40; i++) {
      header.append("k").append(i).append(": &a").append(i).append(" [*a").append(i - 1);
      header.append(", *a").append(i - 1).append("]\n");
    }
    workspace.write("articles/topics/bomb.md", "---\n" + header + "---\n");
    assertThat(workspace.library().problems())
        .isNotEmpty()
        .allMatch(problem -> problem.file().equals("articles/topics/bomb.md"));
  }

  @Test
  void aBodyNestedWithoutEndIsRead() {
    workspace.write(
        "articles/topics/deep.md", "---\ntitle: Deep\n---\n" + ">".repeat(9_990) + " text\n");
    assertThat(workspace.library().problems()).isEmpty();
    assertThat(workspace.library().page("deep")).isPresent();
  }

  @Test
  void aParagraphStressedWithoutEndIsRead() {
    workspace.write(
        "articles/topics/deep.md", "---\ntitle: Deep\n---\n" + "*a **a ".repeat(1_400) + "\n");
    workspace.write(
        "articles/topics/deeper.md",
        "---\ntitle: Deeper\n---\n" + "**x **x\n".repeat(2_400) + "b** b**\n".repeat(2_400));
    workspace.write(
        "articles/topics/pictures.md",
        "---\ntitle: Pictures\n---\n" + "![".repeat(900) + "a" + "](b)".repeat(1_600) + "\n");
    assertThat(workspace.library().pages())
        .extracting(Page::id)
        .contains("deep", "deeper", "pictures");
  }

  @Test
  void aLinkToAFileOutsideIsNoPage() throws IOException {
    Path outside = Files.createTempFile("outside", ".md");
    Files.writeString(outside, "---\ntitle: Outside\n---\n");
    Files.createSymbolicLink(folder.resolve("articles/topics/outside.md"), outside);
    assertThat(theOnlyProblem()).contains("outside.md: is not a file within the workspace");
  }

  @Test
  void aDrawingThatLoadsSomethingIsRefused() {
    workspace.write(
        "articles/pictures/loads.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"https://example.org/a\"/></svg>");
    workspace.write("articles/topics/a.md", "---\ntitle: A\n---\n![x](../pictures/loads.svg)\n");
    assertThat(theOnlyProblem()).contains("refers to something outside itself in href");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<style>@import 'https://example.org/a.css';</style>",
        "<style>path{fill:url( \"https://example.org/a\" )}</style>",
        "<path fill='url(#a) url(https://example.org/a)'/>",
        "<path style='fill: URL(other.svg#a)'/>"
      })
  void aDrawingWhoseStylesReferOutsideIsRefused(String inside) {
    String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\">" + inside + "</svg>";
    assertThat(PictureSafety.wrong(stream(svg)))
        .get()
        .asString()
        .contains("refers to something outside itself");
  }

  @Test
  void aDrawingThatRefersToItsOwnPartsIsShown() {
    assertThat(
            PictureSafety.wrong(
                stream(
                    "<svg xmlns=\"http://www.w3.org/2000/svg\"><path id='a' d='M0 0h9'/>"
                        + "<use href='#a' fill=\"url('#b')\" stroke='url( #b )'/></svg>")))
        .isEmpty();
  }

  @Test
  void aDrawingNestedWithoutEndIsRefused() {
    assertThat(
            PictureSafety.wrong(stream("<svg>" + "<g>".repeat(70) + "</g>".repeat(70) + "</svg>")))
        .contains("is nested more than 64 deep");
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void ofABrokenDrawingOnlyWhatIsWrongIsSaid() {
    PrintStream own = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      byte[] noText = {'<', 's', (byte) 0xff, (byte) 0xfe, '>'};
      assertThat(PictureSafety.wrong(new ByteArrayInputStream(noText)))
          .contains("is not UTF-8 text");
      assertThat(PictureSafety.wrong(stream("<svg>\n<g></svg>")))
          .contains("is not well-formed XML at line 2");
      assertThat(PictureSafety.wrong(stream("\uFEFF<svg/>"))).isEmpty();
    } finally {
      System.setErr(own);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void aDrawingWithADocumentTypeIsRefused() {
    workspace.write(
        "articles/pictures/bomb.svg",
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg xmlns=\"http://www.w3.org/2000/svg\"/>");
    workspace.write("articles/topics/a.md", "---\ntitle: A\n---\n![x](../pictures/bomb.svg)\n");
    assertThat(theOnlyProblem())
        .contains("\"../pictures/bomb.svg\"")
        .contains("has a document type");
  }

  /** The one problem there is; and the rest of the library is still there. */
  private String theOnlyProblem() {
    Library library = workspace.library();
    assertThat(library.page("good")).isPresent();
    List<Problem> problems = library.problems();
    assertThat(problems).hasSize(1);
    return problems.get(0).toString();
  }
}
