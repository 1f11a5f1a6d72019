package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Condition;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.markdown.MarkdownReader;
import limberboard.print.markdown.MarkdownReader.Read;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Sentences;

/** Cuts a page's own text: sections that are only for other boats are left out, with the reason. */
final class BodyCutter {
  /** The title over what is the owner's where the rest is for licensed people. */
  static final String OWNERS_PART = "What is yours to do";

  private static final int LOWEST_HEADING = 6;

  private final CutContext cutting;

  BodyCutter(CutContext cutting) {
    this.cutting = cutting;
  }

  /** The whole text that is for the boat. */
  List<Block> cut(Page<?> page) {
    List<Read> read = read(page);
    boolean titled =
        !read.isEmpty()
            && read.get(0).headingLevel() == 1
            && read.get(0).headingText().equals(page.title());
    return cut(page, titled ? read.subList(1, read.size()) : read);
  }

  /**
   * Only what is the owner's: the sections that the header names as the owner's, and what stands
   * before the first heading, except numbered steps. Of a page without headings nothing is the
   * owner's, since nobody has said what is.
   */
  List<Block> ownersPart(Page<Procedure> page) {
    List<Read> all = read(page);
    boolean owners = all.stream().anyMatch(BodyCutter::isHeading);
    List<Read> kept = new ArrayList<>();
    int level = 0;
    for (Read read : all) {
      boolean named = page.details().ownerParts().contains(read.headingText());
      if (isHeading(read) && (named || level == 0 || read.headingLevel() <= level)) {
        owners = named;
        level = read.headingLevel();
      }
      if (owners && (level > 0 || !isSteps(read.block()))) {
        kept.add(read);
      }
    }
    return cut(page, kept);
  }

  private static boolean isSteps(Block block) {
    return block instanceof Block.Items items && items.numbered();
  }

  private List<Read> read(Page<?> page) {
    LinkTargets targets =
        new LinkTargets(
            page.path(),
            id -> cutting.library().page(id).isPresent(),
            new QuotedFigures(cutting)::beside);
    return new MarkdownReader(targets).read(page.body());
  }

  private List<Block> cut(Page<?> page, List<Read> reads) {
    List<Block> blocks = new ArrayList<>();
    int skipped = 0;
    for (Read read : reads) {
      if (isHeading(read) && read.headingLevel() <= skipped) {
        skipped = 0;
      }
      if (skipped == 0) {
        Condition only = page.head().onlyFor().getOrDefault(read.headingText(), Condition.ALWAYS);
        if (cutting.shows(only, quoted(read.headingText()))) {
          blocks.add(read.block());
          cutting.onlyFor(only).ifPresent(words -> blocks.add(note(words)));
        } else {
          skipped = read.headingLevel();
        }
      }
    }
    return blocks;
  }

  private static boolean isHeading(Read read) {
    return read.headingLevel() > 0;
  }

  private static String quoted(String heading) {
    return "the section “" + heading + "”";
  }

  private static Block note(String words) {
    String sentence = Sentences.capital(words) + ".";
    return new Block.Paragraph(List.of(new Inline.Emphasis(Inline.text(sentence))));
  }

  /**
   * The part for the blocks; empty when there are none. Under a title, the text's own headings are
   * set one level lower.
   */
  static Optional<Part> part(String title, List<Block> blocks) {
    List<Block> set = title.isEmpty() ? blocks : blocks.stream().map(BodyCutter::lower).toList();
    return set.isEmpty() ? Optional.empty() : Optional.of(new Part(Part.Role.BODY, title, set));
  }

  private static Block lower(Block block) {
    return block instanceof Block.Heading heading
        ? new Block.Heading(Math.min(LOWEST_HEADING, heading.level() + 1), heading.text())
        : block;
  }
}
