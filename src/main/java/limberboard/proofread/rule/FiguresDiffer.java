package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.proofread.file.TradeWords.Agreed;

/**
 * Figures for the same thing that differ between pages which link to one another or share a
 * material. The page whose figure fewer pages have is the one that is told.
 */
final class FiguresDiffer implements Rule {
  private static final double SLACK = 1.2;

  @Override
  public String name() {
    return "two-figures";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (Agreed agreed : around.words().figures()) {
      List<Statement> said = Statement.of(page, agreed, around);
      if (!said.isEmpty()) {
        List<Statement> all = around.statements(agreed);
        said.stream()
            .flatMap(own -> other(own, all, around).stream().map(it -> told(own, it, agreed)))
            .findFirst()
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private PageRemark told(Statement own, Statement other, Agreed agreed) {
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        own.page(),
        own.line(),
        agreed.about(),
        agreed.about()
            + " is “"
            + own.figure().written()
            + "” here and “"
            + other.figure().written()
            + "” on line "
            + other.line()
            + " of "
            + other.page().path(),
        "make them one, or say in the sentence why they differ");
  }

  private static Optional<Statement> other(
      Statement own, List<Statement> all, Surroundings around) {
    long with = supporters(own, all);
    return all.stream()
        .filter(that -> own.figure().differsFrom(that.figure(), SLACK))
        .filter(that -> that.page().equals(own.page()) || related(own, that, around.library()))
        .filter(that -> !saysBoth(own, that, all))
        .filter(that -> supporters(that, all) >= with)
        .findFirst();
  }

  /** A page that says both figures says when which holds. */
  private static boolean saysBoth(Statement own, Statement that, List<Statement> all) {
    return all.stream()
        .anyMatch(
            third ->
                third.page().equals(own.page())
                    && !third.figure().differsFrom(that.figure(), SLACK));
  }

  private static long supporters(Statement one, List<Statement> all) {
    return all.stream()
        .filter(that -> !that.figure().differsFrom(one.figure(), SLACK))
        .map(that -> that.page().id())
        .distinct()
        .count();
  }

  private static boolean related(Statement own, Statement that, Library library) {
    String a = own.page().id();
    String b = that.page().id();
    if (library.linksFrom(a).contains(b) || library.linksFrom(b).contains(a)) {
      return true;
    }
    SortedSet<String> shared = new TreeSet<>(library.linksFrom(a));
    shared.retainAll(library.linksFrom(b));
    return shared.stream()
        .flatMap(id -> library.material(id).stream())
        .anyMatch(material -> !material.details().isTool());
  }

  /** All statements of a library, by what they are about. */
  static Map<Agreed, List<Statement>> statements(Surroundings around) {
    Map<Agreed, List<Statement>> all = new LinkedHashMap<>();
    around.words().figures().forEach(agreed -> all.put(agreed, new ArrayList<>()));
    for (Page<?> page : around.library().pages()) {
      all.forEach((agreed, said) -> said.addAll(Statement.of(page, agreed, around)));
    }
    return all;
  }
}
