package limberboard.desktop.write;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.desktop.parts.Card;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.words.Sentences;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;

/** Something that can be opened for writing. */
sealed interface PageChoice {
  /** Most entries that are shown; what is typed makes them fewer. */
  int MOST = 400;

  /** How it is shown. */
  Card card();

  /** A text that an earlier sitting has left. */
  record Left(KeptTexts.Offered offered, Card card) implements PageChoice {}

  /** A page that is open. */
  record Open(OpenPage page, Card card) implements PageChoice {}

  /** A page of the library. */
  record OfLibrary(Page<?> page, Card card) implements PageChoice {}

  /** A file that cannot be read as a page. */
  record Broken(String path, Kind kind, Card card) implements PageChoice {}

  /** All pages of the library for which some words fit. */
  static List<PageChoice> pages(WriteModel model, String words) {
    return model.library().pages().stream()
        .filter(page -> fits(words, page.title(), page.id()))
        .sorted(Comparator.<Page<?>, Kind>comparing(Page::kind).thenComparing(Page::title))
        .limit(MOST)
        .<PageChoice>map(
            page ->
                new OfLibrary(
                    page,
                    Card.of(page.title(), page.id())
                        .under(Sentences.capital(page.kind().folder()))))
        .toList();
  }

  /** Everything that can be opened and for which some words fit: what was left comes first. */
  static List<PageChoice> all(WriteModel model, String words) {
    List<PageChoice> all = new ArrayList<>();
    for (KeptTexts.Offered left : model.keeping().left()) {
      KeptText kept = left.kept();
      if (fits(words, kept.path(), "")) {
        all.add(
            new Left(
                left,
                Card.of(kept.path(), "Typed until " + day(kept) + " and not saved.")
                    .under("Text that was not saved")));
      }
    }
    for (OpenPage page : model.pages()) {
      if (fits(words, page.title(), page.id())) {
        all.add(
            new Open(
                page,
                Card.of(page.title(), page.id())
                    .ofKind(page.isChanged() ? "not saved" : "")
                    .under("Open now")));
      }
    }
    all.addAll(broken(model, words));
    all.addAll(pages(model, words));
    return all;
  }

  private static String day(KeptText kept) {
    return ZonedDateTime.ofInstant(kept.at(), ZoneId.systemDefault())
        .format(DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK));
  }

  private static List<PageChoice> broken(WriteModel model, String words) {
    Set<String> read = model.library().pages().stream().map(Page::path).collect(Collectors.toSet());
    List<PageChoice> all = new ArrayList<>();
    model.library().problems().stream()
        .map(Problem::file)
        .distinct()
        .filter(path -> !read.contains(path) && fits(words, path, ""))
        .forEach(
            path ->
                kind(path)
                    .ifPresent(
                        kind ->
                            all.add(
                                new Broken(
                                    path,
                                    kind,
                                    Card.of(path, "").under("Cannot be read just now")))));
    return all;
  }

  private static Optional<Kind> kind(String path) {
    return List.of(Kind.values()).stream()
        .filter(kind -> path.startsWith("articles/" + kind.folder() + "/") && path.endsWith(".md"))
        .findFirst();
  }

  private static boolean fits(String words, String title, String id) {
    String all = (title + " " + id).toLowerCase(Locale.ROOT);
    return words.isBlank()
        || List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream()
            .allMatch(all::contains);
  }
}
