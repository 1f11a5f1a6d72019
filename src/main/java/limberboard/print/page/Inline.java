package limberboard.print.page;

import java.util.List;

/** A run of text within a block. */
public sealed interface Inline {
  /** Hands itself to whatever writes runs of its kind. */
  void to(InlineWriter out);

  /**
   * Plain text.
   *
   * @param text the text, never interpreted
   */
  record Text(String text) implements Inline {
    @Override
    public void to(InlineWriter out) {
      out.text(this);
    }
  }

  /**
   * Stressed text.
   *
   * @param parts what is stressed
   */
  record Emphasis(List<Inline> parts) implements Inline {
    /** Copies the list. */
    public Emphasis {
      parts = List.copyOf(parts);
    }

    @Override
    public void to(InlineWriter out) {
      out.emphasis(this);
    }
  }

  /**
   * Strongly stressed text.
   *
   * @param parts what is stressed
   */
  record Strong(List<Inline> parts) implements Inline {
    /** Copies the list. */
    public Strong {
      parts = List.copyOf(parts);
    }

    @Override
    public void to(InlineWriter out) {
      out.strong(this);
    }
  }

  /**
   * Something to be typed or read letter by letter.
   *
   * @param text the text
   */
  record Code(String text) implements Inline {
    @Override
    public void to(InlineWriter out) {
      out.code(this);
    }
  }

  /**
   * A link to a page of the library.
   *
   * @param id the page's id
   * @param parts what is shown
   */
  record PageLink(String id, List<Inline> parts) implements Inline {
    /** Copies the list. */
    public PageLink {
      parts = List.copyOf(parts);
    }

    @Override
    public void to(InlineWriter out) {
      out.link(this);
    }
  }

  /**
   * The name of a caution at the place where it bites.
   *
   * @param id the caution's page
   * @param title its title
   */
  record CautionName(String id, String title) implements Inline {
    @Override
    public void to(InlineWriter out) {
      out.cautionName(this);
    }
  }

  /**
   * A drawing or photograph of the workspace.
   *
   * @param path relative to the workspace, with {@code /}, within {@code articles/}
   * @param alt what it shows, in words
   */
  record Picture(String path, String alt) implements Inline {
    @Override
    public void to(InlineWriter out) {
      out.picture(this);
    }
  }

  /** The end of a line that its author wanted there. */
  record LineBreak() implements Inline {
    @Override
    public void to(InlineWriter out) {
      out.lineBreak(this);
    }
  }

  /** Text as a list of one. */
  static List<Inline> text(String text) {
    return List.of(new Text(text));
  }
}
