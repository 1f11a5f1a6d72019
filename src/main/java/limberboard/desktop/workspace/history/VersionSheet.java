package limberboard.desktop.workspace.history;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import limberboard.history.parts.TextParts;
import limberboard.library.Library;
import limberboard.library.OnePage;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/**
 * Versions of a page as sheets to be read: what changed from one to another, and how one stood. Not
 * for the event thread.
 */
final class VersionSheet {
  private static final String ONLY =
      "This is to compare, not to work by. Before any work read the page as it is now, with its"
          + " cautions: ";
  private final Library library;
  private final String path;

  VersionSheet(Library library, String path) {
    this.library = library;
    this.path = path;
  }

  /**
   * What changed.
   *
   * @param before the whole text before
   * @param now the whole text after it
   * @param which which versions these are, in words
   */
  CutPage differences(String before, String now, String which) {
    TextParts old = TextParts.of(path, before);
    TextParts text = TextParts.of(path, now);
    List<Part> parts = new ArrayList<>(List.of(notice()));
    List<Part> found = new ArrayList<>(ChangedKeys.between(old, text));
    found.addAll(new ChangedText(old, text, targets()).parts());
    if (found.isEmpty()) {
      String same = before.equals(now) ? "Nothing differs." : "Only blank lines or remarks differ.";
      found.add(new Part(Part.Role.BODY, "", List.of(Block.Paragraph.of(same))));
    }
    parts.addAll(found);
    return sheet("what changed", title(text), which, parts);
  }

  /**
   * How the page stood.
   *
   * @param then the whole text
   * @param which which version it is, in words
   */
  CutPage stood(String then, String which) {
    List<Part> parts = new ArrayList<>();
    Optional<Page<?>> page = OnePage.read(path, kind(), then);
    if (page.isPresent()) {
      CutPage cut = new PageCutter(library).cut(page.get(), Optional.empty());
      parts.addAll(cut.parts());
      parts.add(parts.isEmpty() || parts.get(0).role() != Part.Role.CAUTIONS ? 0 : 1, notice());
      return new CutPage(id(), kind(), cut.label(), cut.title(), cut.summary(), which, parts);
    }
    parts.add(notice());
    parts.add(
        new Part(
            Part.Role.BODY,
            "",
            List.of(
                Block.Paragraph.of("It could not be read as a page then; this stood in the file:"),
                new Block.Verbatim(then))));
    return sheet("as it stood", title(TextParts.of(path, then)), which, parts);
  }

  private CutPage sheet(String label, String title, String which, List<Part> parts) {
    return new CutPage(id(), kind(), label, title, "", which, parts);
  }

  private Part notice() {
    Optional<Page<?>> page = library.page(id());
    Inline link =
        page.<Inline>map(now -> new Inline.PageLink(id(), Inline.text(now.title())))
            .orElseGet(() -> new Inline.Text("it is not in the library now."));
    return new Part(
        Part.Role.NOTICE, "", List.of(new Block.Notice(List.of(new Inline.Text(ONLY), link))));
  }

  private LinkTargets targets() {
    return new LinkTargets(path, id -> library.page(id).isPresent());
  }

  private String title(TextParts text) {
    return text.value("title").orElse(id());
  }

  private String id() {
    return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
  }

  private Kind kind() {
    return Arrays.stream(Kind.values())
        .filter(kind -> path.startsWith("articles/" + kind.folder() + "/"))
        .findFirst()
        .orElse(Kind.TOPIC);
  }
}
