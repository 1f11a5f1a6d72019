package limberboard.desktop.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import limberboard.library.Library;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.page.Topic;
import limberboard.library.value.Condition;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;

/** The user guide, part by part. Immutable. */
public final class Guide {
  private static final List<String> BOOKS =
      List.of("user-guide", "terminal", "file-formats", "tracing", "rigging", "workings");
  private static final String FOLDER = "articles/topics/";
  private static final int DEEPEST = 3;

  private final List<Part> parts;
  private final Library library;

  /**
   * A part of the guide: what stands between two headings.
   *
   * @param id its id, the book's name for the first part of a book
   * @param title its heading
   * @param level 1 for the book itself, to 3
   */
  public record Part(String id, String title, int level) {}

  private record Section(Part part, String book, String body) {}

  private Guide(List<Section> sections) {
    List<Page<?>> pages = new ArrayList<>();
    for (Section section : sections) {
      pages.add(page(section));
    }
    parts = sections.stream().map(Section::part).toList();
    library = new Library(pages, Map.of(), List.of());
  }

  /** The guide that is packed with the program; empty when it was built without. */
  public static Guide packed() {
    return of(Guide::resource);
  }

  private static Optional<String> resource(String book) {
    try (InputStream in = Guide.class.getResourceAsStream("/limberboard/help/" + book + ".md")) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A guide.
   *
   * @param books the Markdown of a book by its name; a book that is missing is left out
   */
  public static Guide of(Function<String, Optional<String>> books) {
    List<Section> sections = new ArrayList<>();
    for (String book : BOOKS) {
      books.apply(book).ifPresent(text -> sections.addAll(sections(book, text)));
    }
    return new Guide(sections);
  }

  private static List<Section> sections(String book, String text) {
    Map<Part, StringBuilder> bodies = new LinkedHashMap<>();
    StringBuilder body = new StringBuilder();
    boolean fenced = false;
    for (String line : text.split("\\R", -1)) {
      fenced ^= line.startsWith("```");
      int level = fenced ? 0 : level(line);
      if (level > 0) {
        String title = line.substring(level).strip().replace("`", "");
        body = new StringBuilder();
        bodies.put(new Part(id(book, title, bodies.isEmpty()), title, level), body);
      } else if (!line.startsWith("![")) {
        body.append(line).append('\n');
      }
    }
    return bodies.entrySet().stream()
        .map(entry -> new Section(entry.getKey(), book, entry.getValue().toString()))
        .toList();
  }

  private static int level(String line) {
    int level = 0;
    while (level < line.length() && line.charAt(level) == '#') {
      level++;
    }
    boolean heading = level > 0 && level <= DEEPEST && line.startsWith(" ", level);
    return heading ? level : 0;
  }

  private static String id(String book, String title, boolean first) {
    String name = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return first ? book : book + "--" + name;
  }

  private static Page<?> page(Section section) {
    Head head =
        new Head(
            section.part().title(),
            "",
            List.of(),
            Optional.empty(),
            List.of(),
            Condition.ALWAYS,
            List.of(),
            Map.of());
    String path = FOLDER + section.book() + ".md";
    return new Page<>(section.part().id(), path, head, new Topic(), section.body(), 1);
  }

  /** The parts, in order. */
  public List<Part> parts() {
    return parts;
  }

  /** The part with this id. */
  public Optional<Part> part(String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst();
  }

  /** The part of the user guide about a place of the window, or its beginning. */
  public Optional<Part> about(String place) {
    return part("user-guide--" + place).or(() -> parts.stream().findFirst());
  }

  /** A part as a page to be shown. */
  CutPage page(Part part) {
    return new PageCutter(library).cut(library.page(part.id()).orElseThrow(), Optional.empty());
  }
}
