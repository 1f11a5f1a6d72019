package limberboard.desktop.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.value.BoatSystem;
import limberboard.words.Sentences;

/** The contents of the library as a tree. Immutable. */
final class Contents {
  private Contents() {}

  /** What pages of a kind are called. */
  private static String plural(Kind kind) {
    return switch (kind) {
      case SYMPTOM -> "Symptoms";
      case PROCEDURE -> "Procedures";
      case MATERIAL -> "Materials and tools";
      case MODEL -> "Boat models";
      case CAUTION -> "Cautions";
      case TOPIC -> "Background";
      case WORDING -> "Words of letters";
      case COURSE -> "Courses";
    };
  }

  /** A node of the tree. */
  sealed interface Node {
    /** What it is called. */
    String title();
  }

  /**
   * A heading with what is filed under it.
   *
   * @param title what it is called
   * @param nodes what is under it
   */
  record Group(String title, List<Node> nodes) implements Node {
    /** Copies the list. */
    Group {
      nodes = List.copyOf(nodes);
    }

    /** How many pages are under it. */
    int pages() {
      return nodes.stream().mapToInt(n -> n instanceof Group group ? group.pages() : 1).sum();
    }
  }

  /**
   * A page.
   *
   * @param id its id
   * @param title its title
   * @param fits whether it is for the chosen boat
   */
  record Leaf(String id, String title, boolean fits) implements Node {}

  /**
   * The contents.
   *
   * @param library the pages
   * @param filter words that must be in a page's title, summary or what people call it; empty: all
   * @param boat the chosen boat
   */
  static List<Node> of(Library library, String filter, Optional<Fitting> boat) {
    List<Page<?>> pages = library.pages().stream().filter(matches(filter)).toList();
    List<Node> nodes = new ArrayList<>();
    for (BoatSystem system : BoatSystem.values()) {
      List<Node> kinds = kinds(pages, page -> filedUnder(page, system), boat);
      if (!kinds.isEmpty()) {
        nodes.add(new Group(Sentences.capital(system.spoken()), kinds));
      }
    }
    nodes.addAll(kinds(pages, page -> !isFiledBySystem(page), boat));
    return List.copyOf(nodes);
  }

  private static boolean isFiledBySystem(Page<?> page) {
    return page.head().system().isPresent()
        && (page.kind() == Kind.SYMPTOM
            || page.kind() == Kind.PROCEDURE
            || page.kind() == Kind.TOPIC);
  }

  private static boolean filedUnder(Page<?> page, BoatSystem system) {
    return isFiledBySystem(page) && page.head().system().equals(Optional.of(system));
  }

  private static List<Node> kinds(
      List<Page<?>> pages, Predicate<Page<?>> wanted, Optional<Fitting> boat) {
    List<Node> kinds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<Node> leaves =
          pages.stream()
              .filter(page -> page.kind() == kind && wanted.test(page))
              .sorted(Comparator.comparing(page -> page.title().toLowerCase(Locale.ROOT)))
              .map(page -> (Node) leaf(page, boat))
              .toList();
      if (!leaves.isEmpty()) {
        kinds.add(new Group(plural(kind), leaves));
      }
    }
    return kinds;
  }

  private static Leaf leaf(Page<?> page, Optional<Fitting> boat) {
    boolean fits = boat.map(fitting -> fitting.fits(page.head().fits())).orElse(true);
    return new Leaf(page.id(), page.title(), fits);
  }

  private static Predicate<Page<?>> matches(String filter) {
    String[] words = filter.strip().toLowerCase(Locale.ROOT).split("\\s+");
    return page -> {
      String text =
          (page.title() + " " + page.head().summary() + " " + page.head().saidAs())
              .toLowerCase(Locale.ROOT);
      for (String word : words) {
        if (!text.contains(word)) {
          return false;
        }
      }
      return true;
    };
  }
}
