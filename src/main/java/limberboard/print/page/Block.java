package limberboard.print.page;

import java.util.List;
import java.util.Optional;

/** A piece of a page that stands by itself. */
public sealed interface Block {
  /** Hands itself to whatever writes blocks of its kind. */
  void to(BlockWriter out);

  /**
   * A heading within the page.
   *
   * @param level 2 to 6
   * @param text its text
   */
  record Heading(int level, List<Inline> text) implements Block {
    public Heading {
      text = List.copyOf(text);
    }

    @Override
    public void to(BlockWriter out) {
      out.heading(this);
    }
  }

  /**
   * A paragraph.
   *
   * @param text its text
   */
  record Paragraph(List<Inline> text) implements Block {
    public Paragraph {
      text = List.copyOf(text);
    }

    /** A paragraph of plain text. */
    public static Paragraph of(String text) {
      return new Paragraph(Inline.text(text));
    }

    @Override
    public void to(BlockWriter out) {
      out.paragraph(this);
    }
  }

  /**
   * A list.
   *
   * @param numbered whether its items have numbers
   * @param start the first item's number
   * @param tight whether the items stand close
   * @param items what each item holds
   */
  record Items(boolean numbered, int start, boolean tight, List<List<Block>> items)
      implements Block {
    public Items {
      items = items.stream().map(List::copyOf).toList();
    }

    /** A tight list with dots, one line of text an item. */
    public static Items dotted(List<List<Inline>> lines) {
      return new Items(
          false, 1, true, lines.stream().map(line -> List.<Block>of(new Paragraph(line))).toList());
    }

    @Override
    public void to(BlockWriter out) {
      out.items(this);
    }
  }

  /**
   * Quoted blocks.
   *
   * @param blocks what is quoted
   */
  record Quote(List<Block> blocks) implements Block {
    public Quote {
      blocks = List.copyOf(blocks);
    }

    @Override
    public void to(BlockWriter out) {
      out.quote(this);
    }
  }

  /**
   * Text kept line by line.
   *
   * @param text the lines
   */
  record Verbatim(String text) implements Block {
    @Override
    public void to(BlockWriter out) {
      out.verbatim(this);
    }
  }

  /** A line across. */
  record Rule() implements Block {
    @Override
    public void to(BlockWriter out) {
      out.rule(this);
    }
  }

  /**
   * A table; every row has as many cells as there are columns, or one that goes across all of them.
   *
   * @param columns how each column is set
   * @param head the heads of the columns
   * @param rows the rows' cells; a row of one cell is the heading of those below it
   */
  record Table(List<Side> columns, List<List<Inline>> head, List<List<List<Inline>>> rows)
      implements Block {
    public Table {
      columns = List.copyOf(columns);
      head = head.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }

    /** Whether a row is the heading of those below it: one cell that goes across the table. */
    public boolean isHeading(List<?> row) {
      return row.size() == 1 && columns.size() > 1;
    }

    @Override
    public void to(BlockWriter out) {
      out.table(this);
    }
  }

  /** To which side a column is set. */
  enum Side {
    LEFT,
    CENTRE,
    RIGHT
  }

  /**
   * A caution in full, quoted from its page.
   *
   * @param id the caution's page
   * @param title its title
   * @param danger what can hurt whom
   * @param act what to do about it, most important first
   * @param seek who or what comes before this page, or empty
   * @param because what brings the danger in, such as a material's name, or empty
   * @param question what must be answered with yes for it to hold now; empty: it holds
   */
  record CautionBox(
      String id,
      String title,
      String danger,
      List<String> act,
      String seek,
      String because,
      Optional<String> question)
      implements Block {
    public CautionBox {
      act = List.copyOf(act);
    }

    /** A caution that holds, whatever anybody says. */
    public CautionBox(
        String id, String title, String danger, List<String> act, String seek, String because) {
      this(id, title, danger, act, seek, because, Optional.empty());
    }

    @Override
    public void to(BlockWriter out) {
      out.caution(this);
    }
  }

  /**
   * A caution in two lines.
   *
   * @param id the caution's page
   * @param title its title
   * @param danger what can hurt whom, in a few words
   * @param rule the one rule that matters here
   * @param at the lines of a list that it is for, in words; empty where it is for all that follows
   */
  record ShortCaution(String id, String title, String danger, String rule, String at)
      implements Block {
    @Override
    public void to(BlockWriter out) {
      out.shortCaution(this);
    }
  }

  /**
   * Cautions that somebody has read in what is being traced, by name in one line, each leading to
   * its whole text.
   *
   * @param names those read; maybe none
   * @param more whether others stand before it that can be said to have been read
   */
  record FoldedCautions(List<Inline.CautionName> names, boolean more) implements Block {
    public FoldedCautions {
      names = List.copyOf(names);
    }

    @Override
    public void to(BlockWriter out) {
      out.foldedCautions(this);
    }
  }

  /**
   * Something the reader must know before going on, such as who may do the work.
   *
   * @param text what it says
   */
  record Notice(List<Inline> text) implements Block {
    public Notice {
      text = List.copyOf(text);
    }

    @Override
    public void to(BlockWriter out) {
      out.notice(this);
    }
  }

  /**
   * A drawing made for this page, in SVG.
   *
   * @param svg the drawing
   * @param alt what it shows, in words
   * @param wholeSheet whether it is made for a sheet of its own, with the margins of a card
   */
  record Drawing(String svg, String alt, boolean wholeSheet) implements Block {
    /** A drawing among other blocks. */
    public Drawing(String svg, String alt) {
      this(svg, alt, false);
    }

    @Override
    public void to(BlockWriter out) {
      out.drawing(this);
    }
  }

  /**
   * Forks of a diagnostic tree, on paper two side by side.
   *
   * @param forks the forks, each before those behind it
   */
  record Forks(List<Fork> forks) implements Block {
    public Forks {
      forks = List.copyOf(forks);
    }

    @Override
    public void to(BlockWriter out) {
      out.forks(this);
    }
  }

  /**
   * A fork of a diagnostic tree; never divided between two sheets.
   *
   * @param number its number in the tree, from 1
   * @param from the number of the fork that leads here; empty at the root
   * @param what what is done here
   * @param facts time, what to open first, who may do it: one line each
   * @param cautions the names of the cautions that bite here, in words, or empty
   * @param ways how it can turn out, in order
   */
  record Fork(
      int number,
      Optional<Integer> from,
      List<Inline> what,
      List<String> facts,
      String cautions,
      List<Way> ways) {
    public Fork {
      what = List.copyOf(what);
      facts = List.copyOf(facts);
      ways = List.copyOf(ways);
    }
  }

  /**
   * One way a step can turn out.
   *
   * @param finding what is found
   * @param chance how likely that is, in words
   * @param then where to go on, in words
   */
  record Way(String finding, String chance, String then) {}

  /**
   * Things to tick off, none of them ever divided between two sheets, with room for notes.
   *
   * @param ticks the things, in order
   * @param notes how many empty lines for notes stand below them
   * @param close whether what to look for goes on behind the thing, to save paper, and not beside
   *     it
   */
  record TickList(List<Tick> ticks, int notes, boolean close) implements Block {
    public TickList {
      ticks = List.copyOf(ticks);
    }

    @Override
    public void to(BlockWriter out) {
      out.ticks(this);
    }
  }

  /**
   * Something to tick off.
   *
   * @param number its number on the sheet, or empty for what is only opened or closed
   * @param what what is done
   * @param facts what there is to know about it: one line each
   * @param beside what to look for
   */
  record Tick(String number, List<Inline> what, List<String> facts, List<Fact> beside) {
    public Tick {
      what = List.copyOf(what);
      facts = List.copyOf(facts);
      beside = List.copyOf(beside);
    }

    /** Something that is only opened or closed. */
    public static Tick passing(String what) {
      return new Tick("", Inline.text(what), List.of(), List.of());
    }
  }

  /**
   * Facts, each with its name.
   *
   * @param facts at least one
   */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public void to(BlockWriter out) {
      out.facts(this);
    }
  }

  /**
   * A fact.
   *
   * @param name what it is about
   * @param value what is said of it
   */
  record Fact(String name, List<Inline> value) {
    public Fact {
      value = List.copyOf(value);
    }

    /** A fact in plain text. */
    public static Fact of(String name, String value) {
      return new Fact(name, Inline.text(value));
    }
  }
}
