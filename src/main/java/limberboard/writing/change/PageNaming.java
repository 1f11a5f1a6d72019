package limberboard.writing.change;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.NamedInBoats;
import limberboard.library.body.FigureQuote;
import limberboard.library.body.LinkPlace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderName;
import limberboard.library.header.YamlScalar;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;
import limberboard.writing.change.NamingFiles.NamingFile;

/**
 * Finds where files name a page, and writes its new id there. Everything else stays to the letter.
 *
 * @param folders the workspace
 * @param renaming which page, and what it is to be called
 */
record PageNaming(WorkspaceFolders folders, Renaming renaming) {
  /**
   * A place where the page is named.
   *
   * @param from where the letters begin
   * @param to where they end
   * @param line its line, from 1
   * @param letters what is to stand there
   */
  record Place(int from, int to, int line, String letters) {}

  /** All places of a file's text, in order. */
  List<Place> places(NamingFile file, String text) {
    if (!mayName(text)) {
      return List.of();
    }
    List<Place> places = new ArrayList<>();
    switch (file.sort()) {
      case PAGE -> page(file, text, places);
      case BOAT -> named(NamedInBoats.of(file.path().getFileName().toString(), text), text, places);
      case CASE -> named(NamedInBoats.ofCase(text), text, places);
      case LETTER -> named(HeaderName.of(NamingRecords.OfLetter.class, text), text, places);
      default -> named(HeaderName.of(NamingRecords.OfDrills.class, text), text, places);
    }
    places.sort(Comparator.comparingInt(Place::from));
    return places;
  }

  /** Whether the id stands in a text at all, and not only as a part of another. */
  private boolean mayName(String text) {
    String id = renaming.from();
    for (int at = text.indexOf(id); at >= 0; at = text.indexOf(id, at + 1)) {
      int end = at + id.length();
      if ((at == 0 || !isOfId(text.charAt(at - 1)))
          && (end == text.length() || !isOfId(text.charAt(end)))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOfId(char c) {
    return c == '-' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z';
  }

  /** The text with the new id in all places. */
  String renamed(NamingFile file, String text) {
    StringBuilder now = new StringBuilder(text);
    List<Place> places = places(file, text);
    for (int i = places.size() - 1; i >= 0; i--) {
      Place place = places.get(i);
      now.replace(place.from(), place.to(), place.letters());
    }
    return now.toString();
  }

  private void page(NamingFile file, String text, List<Place> places) {
    PageText page = new PageText(text);
    Kind kind = file.kind().orElseThrow();
    Optional<Stretch> header = page.header();
    if (header.isPresent()) {
      String yaml = header.get().of(text);
      List<Place> within = new ArrayList<>();
      named(HeaderName.ofPage(kind, yaml), yaml, within);
      int lines = lines(text, header.get().from());
      quoted(file.path(), yaml, within);
      within.forEach(each -> places.add(moved(each, header.get().from(), lines)));
    }
    Stretch body = page.body();
    int lines = lines(text, body.from());
    for (LinkPlace link : LinkPlace.of(body.of(text))) {
      if (leadsToPage(file.path(), link.target())) {
        places.add(
            moved(
                new Place(
                    link.from(), link.to(), link.line() + 1, target(file.path(), link.target())),
                body.from(),
                lines));
      }
    }
  }

  /** Figures of the page that the texts of a header quote. */
  private void quoted(Path file, String yaml, List<Place> places) {
    for (FigureQuote quote : FigureQuote.inText(yaml)) {
      if (leadsToPage(file, quote.target())) {
        int from = quote.to() + "](".length();
        int line = (int) yaml.substring(0, from).chars().filter(c -> c == '\n').count();
        String letters = target(file, quote.target());
        places.add(new Place(from, from + quote.target().length(), line + 1, letters));
      }
    }
  }

  private boolean leadsToPage(Path from, String target) {
    String plain = target.split("#", 2)[0];
    return !plain.isEmpty()
        && folders
            .linked(folders.relative(from), target)
            .filter(renaming.fromPath()::equals)
            .isPresent();
  }

  /** The same link to the new file, written as near to the old one as can be. */
  private String target(Path from, String link) {
    String old = renaming.from() + ".md";
    int hash = link.indexOf('#');
    String path = hash < 0 ? link : link.substring(0, hash);
    String rest = hash < 0 ? "" : link.substring(hash);
    if (path.endsWith(old)) {
      return path.substring(0, path.length() - old.length()) + renaming.to() + ".md" + rest;
    }
    Path to = folders.root().resolve(renaming.toPath());
    return from.getParent().relativize(to).toString().replace('\\', '/') + rest;
  }

  private void named(List<HeaderName> names, String text, List<Place> places) {
    for (HeaderName each : names) {
      if (!each.named().folder().equals(renaming.kind().folder())) {
        continue;
      }
      boolean piece = each.name().startsWith(renaming.from() + "/");
      if (piece || each.name().equals(renaming.from())) {
        String name = renaming.to() + each.name().substring(renaming.from().length());
        String old = text.substring(each.from(), each.to());
        String letters =
            piece && !old.startsWith("'") ? '"' + name + '"' : YamlScalar.like(old, name, true);
        places.add(new Place(each.from(), each.to(), each.line() + 1, letters));
      }
    }
  }

  private static Place moved(Place place, int by, int lines) {
    return new Place(place.from() + by, place.to() + by, place.line() + lines, place.letters());
  }

  private static int lines(String text, int to) {
    return (int) text.substring(0, to).chars().filter(c -> c == '\n').count();
  }
}
