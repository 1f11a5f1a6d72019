package limberboard.desktop.write.complete;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Named;

/**
 * The names that headers may use: of pages, and of what models have.
 *
 * @param library the pages
 */
record NamesOf(Library library) {
  /** All names of a sort, by their letters. */
  List<Candidate> all(Named named) {
    List<Candidate> all = new ArrayList<>(found(named));
    all.sort(Comparator.comparing(Candidate::letters));
    return all;
  }

  private List<Candidate> found(Named named) {
    return switch (named) {
      case ZONE ->
          ofModels(
              model -> model.drawnZones().stream().map(each -> named(each.id(), each.title())));
      case ACCESS ->
          ofModels(model -> model.access().stream().map(each -> named(each.id(), each.title())));
      case CHOICE ->
          ofModels(
              model ->
                  model.equipment().stream()
                      .flatMap(each -> each.choices().stream())
                      .map(each -> named(each.id(), each.title())));
      case MEASURE -> ofModels(model -> model.measures().keySet().stream().map(Candidate::of));
      case ROPE -> ofModels(model -> model.ropes().stream().map(each -> Candidate.of(each.id())));
      case SUM, PICTURE -> List.of();
      default -> pages(named);
    };
  }

  private static Candidate named(String id, String title) {
    return new Candidate(id, id, title);
  }

  private List<Candidate> ofModels(Function<Model, Stream<Candidate>> names) {
    Map<String, Candidate> all = new LinkedHashMap<>();
    library.all(Model.class).stream()
        .map(Page::details)
        .flatMap(names)
        .forEach(each -> all.putIfAbsent(each.letters(), each));
    return List.copyOf(all.values());
  }

  private List<Candidate> pages(Named named) {
    return library.pages().stream()
        .filter(page -> page.kind().folder().equals(named.folder()))
        .filter(page -> named != Named.TOOL || isTool(page))
        .<Candidate>map(page -> named(page.id(), page.title()))
        .toList();
  }

  private static boolean isTool(Page<?> page) {
    return page.details() instanceof Material material && material.isTool();
  }
}
