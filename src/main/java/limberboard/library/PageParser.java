package limberboard.library;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import limberboard.library.body.BodyLimits;
import limberboard.library.body.BodyScan;
import limberboard.library.body.FigureQuote;
import limberboard.library.body.Markdown;
import limberboard.library.check.PageQuotes;
import limberboard.library.check.ParsedPage;
import limberboard.library.file.FileNet;
import limberboard.library.file.TextFile;
import limberboard.library.header.HeaderBinder;
import limberboard.library.header.HeaderQuotes;
import limberboard.library.header.HeaderText;
import limberboard.library.header.Ids;
import limberboard.library.header.YamlTree;
import limberboard.library.page.Details;
import limberboard.library.page.Head;
import limberboard.library.page.Kind;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;
import org.commonmark.node.Node;

/** Parses one page by itself, without looking at any other. */
final class PageParser {
  private final HeaderBinder binder = new HeaderBinder();

  /**
   * Parses a page.
   *
   * @param file the file
   * @param path relative to the workspace
   * @param kind what its folder holds
   */
  ParsedPage parse(Path file, String path, Kind kind) {
    String id = id(file.getFileName().toString());
    return FileNet.read(
        path, () -> parse(file, path, id, kind), problem -> unusable(id, path, List.of(problem)));
  }

  private ParsedPage parse(Path file, String path, String id, Kind kind) {
    TextFile.Result read = TextFile.read(file, path);
    return read.problems().isEmpty()
        ? parted(id, path, kind, read.text())
        : unusable(id, path, read.problems());
  }

  /**
   * Parses a page from a text.
   *
   * @param path of its file, relative to the workspace
   * @param kind what its folder holds
   * @param text with line ends {@code \n}
   */
  ParsedPage parse(String path, Kind kind, String text) {
    String id = id(path.substring(path.lastIndexOf('/') + 1));
    return FileNet.read(
        path, () -> parted(id, path, kind, text), problem -> unusable(id, path, List.of(problem)));
  }

  private static String id(String name) {
    return name.substring(0, name.length() - ".md".length());
  }

  private ParsedPage parted(String id, String path, Kind kind, String text) {
    Optional<HeaderText> parts = HeaderText.part(text);
    if (parts.isEmpty()) {
      return unusable(
          id,
          path,
          List.of(
              Problem.error(
                  path,
                  1,
                  "",
                  "has no header",
                  "begin with a line ---, the header's keys, and another line ---")));
    }
    return parse(id, path, kind, parts.get());
  }

  private static ParsedPage unusable(String id, String path, List<Problem> problems) {
    return new ParsedPage(
        id, path, Optional.empty(), BodyScan.NOTHING, PageQuotes.NONE, Map.of(), problems);
  }

  private ParsedPage parse(String id, String path, Kind kind, HeaderText text) {
    YamlTree written = YamlTree.read(path, text.header(), text.headerLine());
    List<HeaderQuotes.Found> inHeader = HeaderQuotes.in(written.root());
    YamlTree tree =
        inHeader.isEmpty()
            ? written
            : new YamlTree(
                HeaderQuotes.plain(written.root(), FigureQuote::written), written.report());
    Optional<Node> document = document(text, tree.report());
    if (!Ids.isId(id)) {
      tree.report()
          .error("", "the file's name is no page id", "use lower-case letters, digits and hyphens");
    }
    boolean readable = !tree.root().isEmpty() || tree.report().isEmpty();
    Optional<Page<?>> page =
        readable && document.isPresent() && Ids.isId(id)
            ? bind(id, path, kind, tree, text)
            : Optional.empty();
    return new ParsedPage(
        id,
        path,
        page,
        document.map(parsed -> BodyScan.of(parsed, text.bodyLine())).orElse(BodyScan.NOTHING),
        document
            .map(
                parsed ->
                    quotes(
                        written.root(),
                        inHeader,
                        text,
                        FigureQuote.inBody(parsed, text.body()),
                        (header, now) -> {
                          Report unheard = new Report(path, written.report().lines());
                          return bind(id, path, kind, new YamlTree(header, unheard), now);
                        }))
            .orElse(PageQuotes.NONE),
        new TreeMap<>(tree.report().lines()),
        tree.report().problems());
  }

  /** The parsed body; empty, and reported, when it goes beyond a limit. */
  private static Optional<Node> document(HeaderText text, Report report) {
    Optional<BodyLimits.Excess> excess = BodyLimits.ofText(text.body());
    Optional<Node> document =
        excess.isPresent() ? Optional.empty() : Optional.of(Markdown.parse(text.body()));
    excess = excess.or(() -> document.flatMap(BodyLimits::ofDocument));
    if (excess.isPresent()) {
      int line = text.bodyLine() + excess.get().line();
      report.errorOnLine(line, "", excess.get().wrong(), excess.get().right());
      return Optional.empty();
    }
    return document;
  }

  /**
   * What a page quotes.
   *
   * @param bind makes a page of a header and a body
   */
  private static PageQuotes quotes(
      ObjectNode header,
      List<HeaderQuotes.Found> inHeader,
      HeaderText text,
      List<FigureQuote> inBody,
      BiFunction<ObjectNode, HeaderText, Optional<Page<?>>> bind) {
    if (inBody.isEmpty() && inHeader.isEmpty()) {
      return PageQuotes.NONE;
    }
    return new PageQuotes(
        inBody.stream().map(quote -> quote.after(text.bodyLine())).toList(),
        inHeader,
        words ->
            bind.apply(
                HeaderQuotes.plain(header, quote -> words.apply(quote).orElse(quote.written())),
                new HeaderText(
                    text.header(),
                    text.headerLine(),
                    FigureQuote.rewritten(text.body(), inBody, words),
                    text.bodyLine())));
  }

  private Optional<Page<?>> bind(
      String id, String path, Kind kind, YamlTree tree, HeaderText text) {
    ObjectNode head = tree.root();
    if (kind == Kind.MODEL) {
      head = tree.root().deepCopy();
      head.remove("zones");
    }
    return binder
        .bind(tree, Head.class, kind.details().asSubclass(Record.class), head)
        .map(both -> page(id, path, both.first(), (Details) both.second(), text));
  }

  private static Page<?> page(String id, String path, Head head, Details details, HeaderText text) {
    return new Page<>(id, path, headOf(head, details), details, text.body(), text.bodyLine());
  }

  /** A model's zones have outlines; its head lists them like any other page's. */
  private static Head headOf(Head head, Details details) {
    if (!(details instanceof Model model)) {
      return head;
    }
    List<String> zones = new ArrayList<>();
    model.drawnZones().forEach(zone -> zones.add(zone.id()));
    return new Head(
        head.title(),
        head.summary(),
        head.saidAs(),
        head.system(),
        zones,
        head.fits(),
        head.sources(),
        head.onlyFor(),
        head.own(),
        head.answered(),
        head.read());
  }
}
