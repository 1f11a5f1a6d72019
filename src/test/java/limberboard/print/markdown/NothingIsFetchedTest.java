package limberboard.print.markdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.print.Layouts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.RawPdf;
import limberboard.print.pdf.StrictXml;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.xhtml.Xhtml;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server counts what is asked of it: nothing, whatever a page holds. */
class NothingIsFetchedTest {
  @TempDir Path folder;
  private HttpServer server;
  private final AtomicInteger asked = new AtomicInteger();
  private String address;

  @BeforeEach
  void startServer() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    address = "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    Files.createDirectories(folder.resolve("articles/pictures"));
  }

  @AfterEach
  void stopServer() {
    server.stop(0);
  }

  @Test
  void theServerWouldNoticeBeingAsked() {
    assertThatThrownBy(() -> URI.create(address + "a.png").toURL().openStream().close())
        .isInstanceOf(IOException.class);
    assertThat(asked).hasValue(1);
  }

  @Test
  void markdownFetchesNothing() throws IOException {
    String markdown =
        ("![a](%sa.png) <img src=\"%sb.png\"/>\n\n<img src='%sc.png'>\n\n"
                + "[l](%sd) ![e](../pictures/remote.svg)\n\n[r]: %se\n\n![r] <%sf>\n")
            .replace("%s", address);
    writeSvg("<image href='" + address + "g.png' width='9' height='9'/>");
    List<Block> blocks =
        new MarkdownReader(new LinkTargets("articles/topics/x.md", id -> false))
            .read(markdown).stream().map(MarkdownReader.Read::block).toList();
    CutPage page =
        new CutPage("x", Kind.TOPIC, "X", "", "", List.of(new Part(Part.Role.BODY, "", blocks)));
    String xhtml = new Xhtml(Pictures.in(new WorkspaceFolders(folder))).render(page, Look.LIGHT);
    assertThat(xhtml)
        .contains("[picture: a]", "[picture: e; it refers to something outside itself in href]")
        .doesNotContain("<img");
    assertThatNothingIsFetched(xhtml);
  }

  /** Even XHTML that did not come from us fetches nothing. */
  @Test
  void strangeXhtmlFetchesNothing() throws IOException {
    writeSvg("<style>@import '" + address + "s.css';</style>");
    assertThatNothingIsFetched(
        ("<html xmlns='http://www.w3.org/1999/xhtml'><head>"
                + "<link rel='stylesheet' type='text/css' href='%sa.css'/>"
                + "<style type='text/css'>@import url(%sb.css);"
                + "@font-face { font-family: X; src: url(%sx.ttf); }"
                + "body { background-image: url(%sc.png); font-family: X }"
                + "li { list-style-image: url(%sd.png) }</style></head>"
                + "<body><img src='%se.png'/><img src='articles/pictures/remote.svg'/>"
                + "<object data='%sf'/><iframe src='%sg'/><ul><li>x</li></ul>"
                + "<input type='image' src='%sh.png'/></body></html>")
            .replace("%s", address));
  }

  @Test
  void filesOutsideTheArticlesAreNotRead() throws IOException {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'/>";
    Files.writeString(folder.resolve("outside.svg"), svg);
    Files.writeString(folder.resolve("articles/inside.svg"), svg);
    Files.createSymbolicLink(folder.resolve("articles/link.svg"), folder.resolve("outside.svg"));
    Pictures pictures = Pictures.in(new WorkspaceFolders(folder));
    assertThat(pictures.find("articles/inside.svg", Look.LIGHT)).isPresent();
    assertThat(pictures.find("outside.svg", Look.LIGHT)).isEmpty();
    assertThat(pictures.find("articles/../outside.svg", Look.LIGHT)).isEmpty();
    assertThat(pictures.find("articles/link.svg", Look.LIGHT)).isEmpty();
    assertThat(pictures.find(folder.resolve("outside.svg").toString(), Look.LIGHT)).isEmpty();
    assertThat(pictures.find("articles/none.svg", Look.LIGHT)).isEmpty();
    assertThat(pictures.find("\0", Look.LIGHT)).isEmpty();
  }

  private void writeSvg(String inside) throws IOException {
    Files.writeString(
        folder.resolve("articles/pictures/remote.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>" + inside + "</svg>");
  }

  private void assertThatNothingIsFetched(String xhtml) throws IOException {
    assertThat(RawPdf.bytes(xhtml, Pictures.in(new WorkspaceFolders(folder)))).isNotEmpty();
    Layouts.painted(StrictXml.parse(xhtml), Pictures.in(new WorkspaceFolders(folder)), Look.LIGHT);
    assertThat(asked).hasValue(0);
  }
}
