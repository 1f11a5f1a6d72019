package limberboard.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/**
 * A model that somebody named.
 *
 * @param model its page
 * @param rest what else was said
 */
record SaidModel(Page<Model> model, SaidWords rest) {

  /** The model named with the most words, by its title, its id or what people call it. */
  static Optional<SaidModel> in(SaidWords said, Library library) {
    Optional<SaidModel> best = Optional.empty();
    for (Page<Model> model : library.all(Model.class)) {
      for (SaidWords name : names(model)) {
        Optional<SaidModel> found = at(said, name, model);
        boolean better =
            found.isPresent()
                && best.map(other -> found.get().rest().size() < other.rest().size()).orElse(true);
        best = better ? found : best;
      }
    }
    return best;
  }

  /** The names, and each of them written as one word: "T 26" and "T26". */
  private static List<SaidWords> names(Page<Model> model) {
    List<SaidWords> names = new ArrayList<>();
    Stream.concat(Stream.of(model.title(), model.id()), model.head().saidAs().stream())
        .map(SaidWords::of)
        .filter(name -> !name.isEmpty())
        .forEach(
            name -> {
              names.add(name);
              names.add(new SaidWords(List.of(String.join("", name.all()))));
              splitBeforeNumber(name).ifPresent(names::add);
            });
    return names;
  }

  private static Optional<SaidWords> splitBeforeNumber(SaidWords name) {
    String[] parts = name.all().get(0).split("(?<=[a-z])(?=[0-9])", 2);
    return name.size() == 1 && parts.length == 2
        ? Optional.of(new SaidWords(List.of(parts)))
        : Optional.empty();
  }

  private static Optional<SaidModel> at(SaidWords said, SaidWords name, Page<Model> model) {
    for (int i = 0; i + name.size() <= said.size(); i++) {
      if (matches(said, i, name)) {
        return Optional.of(new SaidModel(model, said.without(i, i + name.size())));
      }
    }
    return Optional.empty();
  }

  private static boolean matches(SaidWords said, int at, SaidWords name) {
    for (int i = 0; i < name.size(); i++) {
      String word = said.all().get(at + i);
      String wanted = name.all().get(i);
      if (!word.equals(wanted) && !(name.size() > 1 && SaidWords.isLike(word, wanted))) {
        return false;
      }
    }
    return true;
  }
}
