package limberboard.library;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import limberboard.library.page.Caution;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;

/**
 * An immutable snapshot of all pages that could be read, with the links between them and the
 * problems found.
 */
public final class Library {
  private final SortedMap<String, Page<?>> pages;
  private final Map<String, SortedSet<String>> linksFrom;
  private final Map<String, SortedSet<String>> linksTo;
  private final List<Problem> problems;

  /**
   * Makes a snapshot.
   *
   * @param pages the pages, with distinct ids
   * @param linksFrom page id to the ids of pages that it refers to in header or body
   * @param problems what is wrong in the files
   */
  public Library(
      Collection<Page<?>> pages,
      Map<String, ? extends Collection<String>> linksFrom,
      List<Problem> problems) {
    SortedMap<String, Page<?>> byId = new TreeMap<>();
    pages.forEach(page -> byId.put(page.id(), page));
    this.pages = Collections.unmodifiableSortedMap(byId);
    Set<String> ids = new HashSet<>(byId.keySet());
    Map<String, SortedSet<String>> from = new HashMap<>();
    Map<String, SortedSet<String>> to = new HashMap<>();
    linksFrom.forEach(
        (id, targets) -> {
          for (String target : targets) {
            if (ids.contains(target) && !target.equals(id)) {
              from.computeIfAbsent(id, key -> new TreeSet<>()).add(target);
              to.computeIfAbsent(target, key -> new TreeSet<>()).add(id);
            }
          }
        });
    this.linksFrom = from;
    this.linksTo = to;
    this.problems = List.copyOf(problems);
  }

  /** A library without pages. */
  public static Library empty() {
    return new Library(List.of(), Map.of(), List.of());
  }

  private Library(
      SortedMap<String, Page<?>> pages,
      Map<String, SortedSet<String>> linksFrom,
      Map<String, SortedSet<String>> linksTo,
      List<Problem> problems) {
    this.pages = Collections.unmodifiableSortedMap(pages);
    this.linksFrom = linksFrom;
    this.linksTo = linksTo;
    this.problems = List.copyOf(problems);
  }

  /**
   * The same with one page in the place of what its file held. Links of other pages to a page that
   * was not there before are known only once the library is read again.
   *
   * @param page the page
   * @param targets ids of the pages that it refers to
   * @param found what is wrong in its file
   */
  public Library with(Page<?> page, Collection<String> targets, List<Problem> found) {
    String id = page.id();
    SortedMap<String, Page<?>> all = new TreeMap<>(pages);
    all.put(id, page);
    SortedSet<String> now = new TreeSet<>(targets);
    now.retainAll(all.keySet());
    now.remove(id);
    Map<String, SortedSet<String>> from = new HashMap<>(linksFrom);
    Map<String, SortedSet<String>> to = new HashMap<>(linksTo);
    for (String old : linksFrom(id)) {
      SortedSet<String> without = new TreeSet<>(to.get(old));
      without.remove(id);
      to.put(old, without);
    }
    for (String target : now) {
      SortedSet<String> with = new TreeSet<>(to.getOrDefault(target, new TreeSet<>()));
      with.add(id);
      to.put(target, with);
    }
    from.put(id, now);
    List<Problem> wrong = new ArrayList<>(problems);
    wrong.removeIf(problem -> problem.file().equals(page.path()));
    wrong.addAll(found);
    return new Library(all, from, to, wrong);
  }

  /** All pages, by id. */
  public Collection<Page<?>> pages() {
    return pages.values();
  }

  /** The page with this id, of whatever kind. */
  public Optional<Page<?>> page(String id) {
    return Optional.ofNullable(pages.get(id));
  }

  /** The symptom with this id. */
  public Optional<Page<Symptom>> symptom(String id) {
    return page(id, Symptom.class);
  }

  /** The procedure with this id. */
  public Optional<Page<Procedure>> procedure(String id) {
    return page(id, Procedure.class);
  }

  /** The material or tool with this id. */
  public Optional<Page<Material>> material(String id) {
    return page(id, Material.class);
  }

  /** The model with this id. */
  public Optional<Page<Model>> model(String id) {
    return page(id, Model.class);
  }

  /** The caution with this id. */
  public Optional<Page<Caution>> caution(String id) {
    return page(id, Caution.class);
  }

  /** All pages of a kind, given as its details' class, by id. */
  public <D extends Details> List<Page<D>> all(Class<D> kind) {
    return pages.values().stream().flatMap(page -> page.as(kind).stream()).toList();
  }

  private <D extends Details> Optional<Page<D>> page(String id, Class<D> kind) {
    return page(id).flatMap(page -> page.as(kind));
  }

  /** Ids of the pages that this page refers to, in its header or body. */
  public SortedSet<String> linksFrom(String id) {
    return Collections.unmodifiableSortedSet(linksFrom.getOrDefault(id, new TreeSet<>()));
  }

  /** Ids of the pages that refer to this page, in header or body. */
  public SortedSet<String> linksTo(String id) {
    return Collections.unmodifiableSortedSet(linksTo.getOrDefault(id, new TreeSet<>()));
  }

  /** What is wrong in the files, by file and line. */
  public List<Problem> problems() {
    return problems;
  }

  /** Two snapshots with the same pages, links and problems are equal. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Library that
            && pages.equals(that.pages)
            && linksFrom.equals(that.linksFrom)
            && problems.equals(that.problems);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pages.keySet(), problems);
  }
}
