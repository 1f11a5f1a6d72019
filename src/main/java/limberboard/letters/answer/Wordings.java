package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Wording;
import limberboard.library.value.LetterPart;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.markdown.MarkdownReader;
import limberboard.print.page.Block;

/**
 * The words of a letter at its places: those of the library's pages, and plain ones where no page
 * has any.
 *
 * @param library where the pages are
 * @param boat the boat that the letter is about
 */
record Wordings(Library library, Optional<Fitting> boat) {

  /** The words at a place, with what is filled in. */
  List<DraftLine> of(LetterPart part, Map<String, String> filled) {
    return of(part, "", filled);
  }

  /** The words at a place that has none to fill in. */
  List<DraftLine> of(LetterPart part) {
    return of(part, Map.of());
  }

  /** The words at a place for one of its matters. */
  List<DraftLine> of(LetterPart part, String matter, Map<String, String> filled) {
    return page(part, matter)
        .map(page -> lines(page.path(), page.body(), filled))
        .filter(lines -> !lines.isEmpty())
        .orElseGet(() -> lines("", part.plain(), filled));
  }

  /** The page that has the words; one for the matter goes before one for all. */
  Optional<Page<Wording>> page(LetterPart part, String matter) {
    List<Page<Wording>> all =
        library.all(Wording.class).stream()
            .filter(page -> page.details().part() == part && fits(page))
            .toList();
    return all.stream()
        .filter(page -> page.details().when().contains(matter))
        .findFirst()
        .or(() -> all.stream().filter(page -> page.details().when().isEmpty()).findFirst());
  }

  private boolean fits(Page<Wording> page) {
    return boat.map(known -> known.fits(page.head().fits()))
        .orElseGet(() -> page.head().fits().isEmpty());
  }

  /** What is filled in is put into the words as they were read, so that it can mark nothing up. */
  private static List<DraftLine> lines(String path, String words, Map<String, String> filled) {
    List<Block> blocks = new ArrayList<>();
    MarkdownReader reader = new MarkdownReader(new LinkTargets(path, id -> false));
    reader.read(words).forEach(read -> blocks.add(read.block()));
    return BlockLines.of(blocks).stream()
        .map(line -> new DraftLine(line.kind(), filledIn(line.text(), filled)))
        .toList();
  }

  private static String filledIn(String text, Map<String, String> filled) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      int open = text.indexOf('{', at);
      int close = open < 0 ? -1 : text.indexOf('}', open);
      String value = close < 0 ? null : filled.get(text.substring(open + 1, close));
      if (open < 0) {
        break;
      }
      out.append(text, at, open).append(value == null ? "{" : value);
      at = value == null ? open + 1 : close + 1;
    }
    return out.append(text.substring(at)).toString().strip();
  }
}
