package limberboard.desktop.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Sentences;

/** What stands at the foot of a page on screen: which pages it points to, and which point here. */
public final class PageFoot {
  private PageFoot() {}

  /** The pages that a page points to, by kind and title. */
  public static List<Page<?>> pointsTo(Library library, String id) {
    return sorted(library, library.linksFrom(id));
  }

  /** Which pages point here, by kind and title. */
  public static List<Page<?>> pointHere(Library library, String id) {
    return sorted(library, library.linksTo(id));
  }

  /** The page with its foot. */
  static CutPage under(CutPage page, Library library) {
    List<Part> parts = new ArrayList<>(page.parts());
    add(parts, "This page points to", pointsTo(library, page.id()));
    add(parts, "Which pages point here", pointHere(library, page.id()));
    return new CutPage(
        page.id(), page.kind(), page.label(), page.title(), page.summary(), page.cutFor(), parts);
  }

  private static void add(List<Part> parts, String title, List<Page<?>> pages) {
    if (!pages.isEmpty()) {
      parts.add(new Part(Part.Role.RELATED, title, List.of(new Block.Facts(facts(pages)))));
    }
  }

  private static List<Block.Fact> facts(List<Page<?>> pages) {
    Map<Kind, List<Inline>> kinds = new TreeMap<>();
    for (Page<?> page : pages) {
      List<Inline> links = kinds.computeIfAbsent(page.kind(), kind -> new ArrayList<>());
      if (!links.isEmpty()) {
        links.add(new Inline.Text("; "));
      }
      links.add(new Inline.PageLink(page.id(), Inline.text(page.title())));
    }
    return kinds.entrySet().stream()
        .map(kind -> new Block.Fact(Sentences.capital(kind.getKey().word()), kind.getValue()))
        .toList();
  }

  private static List<Page<?>> sorted(Library library, Iterable<String> ids) {
    List<Page<?>> pages = new ArrayList<>();
    ids.forEach(id -> library.page(id).ifPresent(pages::add));
    pages.sort(Comparator.<Page<?>, Kind>comparing(Page::kind).thenComparing(Page::title));
    return pages;
  }
}
