package limberboard.sharing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.sharing.MergedFile.Place;
import limberboard.sharing.merge.Conflict;
import limberboard.sharing.merge.FileMerge;
import limberboard.sharing.merge.MergedText;
import org.eclipse.jgit.lib.ObjectReader;

/**
 * Brings two versions together that come from one, file by file: a file goes by its name in the
 * version that both come from, whatever it is called now.
 */
final class TreeMerge {
  private final ObjectReader reader;
  private final Side base;
  private final Side ours;
  private final Side theirs;
  private final KeptPages kept;
  private final List<MergedFile> files = new ArrayList<>();
  private final Set<String> keptOnes = new TreeSet<>();

  /**
   * One of the versions.
   *
   * @param files its files
   * @param renames old path to new path since the version that both come from
   */
  record Side(Map<String, Leaf> files, Map<String, String> renames) {
    /** A file of the common version, where it lies here; empty when it was taken away. */
    Optional<Place> place(String before) {
      String path = renames.getOrDefault(before, before);
      return Optional.ofNullable(files.get(path)).map(leaf -> new Place(path, leaf));
    }
  }

  /** Says of a page whether it stays as this copy has it. */
  interface KeptPages {
    /**
     * Whether it stays.
     *
     * @param ours the page here
     * @param theirPath where the other copy has or had it
     */
    boolean isKept(Place ours, String theirPath) throws IOException;
  }

  TreeMerge(ObjectReader reader, Side base, Side ours, Side theirs, KeptPages kept) {
    this.reader = reader;
    this.base = base;
    this.ours = ours;
    this.theirs = theirs;
    this.kept = kept;
  }

  /** What is to become of every file. */
  List<MergedFile> merge() throws IOException {
    for (Map.Entry<String, Leaf> file : base.files().entrySet()) {
      known(new Place(file.getKey(), file.getValue()));
    }
    Set<String> added = new TreeSet<>(addedBy(ours));
    added.addAll(addedBy(theirs));
    for (String path : added) {
      added(path);
    }
    return files;
  }

  /** The pages that stayed as this copy has them, though others changed them. */
  Set<String> kept() {
    return keptOnes;
  }

  private Set<String> addedBy(Side side) {
    Set<String> added = new HashSet<>(side.files().keySet());
    added.removeAll(new HashSet<>(side.renames().values()));
    added.removeAll(base.files().keySet());
    base.files().keySet().stream()
        .filter(path -> side.renames().containsKey(path) && side.files().containsKey(path))
        .forEach(added::add);
    return added;
  }

  private void known(Place before) throws IOException {
    Optional<Place> one = ours.place(before.path());
    Optional<Place> other = theirs.place(before.path());
    Optional<Place> unchanged = Optional.of(before);
    if (!other.equals(unchanged)
        && one.isPresent()
        && kept.isKept(one.get(), other.map(Place::path).orElse(before.path()))) {
      keptOnes.add(one.get().path());
      other = unchanged;
    }
    if (one.equals(other) || other.equals(unchanged)) {
      one.ifPresent(this::take);
    } else if (one.equals(unchanged)) {
      other.ifPresent(this::take);
    } else if (one.isEmpty() || other.isEmpty()) {
      oneTookAway(before, one, other);
    } else {
      both(before, one.get(), other.get());
    }
  }

  private void added(String path) throws IOException {
    boolean isOurs = ours.files().containsKey(path) && addedBy(ours, path);
    boolean isTheirs = theirs.files().containsKey(path) && addedBy(theirs, path);
    Place one = new Place(path, ours.files().get(path));
    Place other = new Place(path, theirs.files().get(path));
    if (!isTheirs) {
      take(one);
    } else if (!isOurs) {
      take(other);
    } else if (one.equals(other)) {
      take(one);
    } else if (kept.isKept(one, path)) {
      keptOnes.add(path);
      take(one);
    } else if (path.contains("/cases/")) {
      take(one);
      take(other);
    } else {
      content(Optional.empty(), one, other, path, Optional.empty());
    }
  }

  private boolean addedBy(Side side, String path) {
    return !side.renames().containsValue(path)
        && (!base.files().containsKey(path) || side.renames().containsKey(path));
  }

  private void take(Place place) {
    files.add(new MergedFile.Taken(place.path(), place.leaf()));
  }

  private void oneTookAway(Place before, Optional<Place> one, Optional<Place> other)
      throws IOException {
    files.add(
        new MergedFile.Whole(
            new Conflict(
                one.or(() -> other).orElse(before).path(),
                Conflict.PAGE,
                "",
                said(before.leaf()),
                one.isPresent() ? said(one.get().leaf()) : "",
                other.isPresent() ? said(other.get().leaf()) : ""),
            Optional.of(before),
            one,
            other));
  }

  private String said(Leaf leaf) throws IOException {
    return leaf.text(reader)
        .orElse("(" + reader.getObjectSize(leaf.id(), ObjectReader.OBJ_ANY) + " bytes, no text)");
  }

  private void both(Place before, Place one, Place other) throws IOException {
    boolean nameOpen =
        !one.path().equals(other.path())
            && !one.path().equals(before.path())
            && !other.path().equals(before.path());
    String path = one.path().equals(before.path()) ? other.path() : one.path();
    Optional<Conflict> name =
        nameOpen
            ? Optional.of(
                new Conflict(
                    one.path(), Conflict.NAME, "", before.path(), one.path(), other.path()))
            : Optional.empty();
    content(Optional.of(before), one, other, path, name);
  }

  private void content(
      Optional<Place> before, Place one, Place other, String path, Optional<Conflict> name)
      throws IOException {
    Optional<String> ours = one.leaf().text(reader);
    Optional<String> theirs = other.leaf().text(reader);
    Optional<String> base = Optional.of("");
    if (before.isPresent()) {
      base = before.get().leaf().text(reader);
    }
    if (ours.isEmpty() || theirs.isEmpty() || base.isEmpty()) {
      binary(before, one, other, path, name);
      return;
    }
    Leaf like =
        before.isPresent() && one.leaf().mode().equals(before.get().leaf().mode())
            ? other.leaf()
            : one.leaf();
    MergedText text = FileMerge.of(path, base.get(), ours.get(), theirs.get());
    files.add(new MergedFile.Text(path, name, like, text));
  }

  /** Pictures and the like: the one that was changed, or a choice of the whole. */
  private void binary(
      Optional<Place> before, Place one, Place other, String path, Optional<Conflict> name)
      throws IOException {
    Optional<Leaf> old = before.map(Place::leaf);
    if (name.isEmpty() && Optional.of(one.leaf()).equals(old)) {
      take(new Place(path, other.leaf()));
    } else if (name.isEmpty()
        && (Optional.of(other.leaf()).equals(old) || one.leaf().equals(other.leaf()))) {
      take(new Place(path, one.leaf()));
    } else {
      String was = before.isPresent() ? said(before.get().leaf()) : "";
      files.add(
          new MergedFile.Whole(
              new Conflict(path, Conflict.PAGE, "", was, said(one.leaf()), said(other.leaf())),
              before,
              Optional.of(one),
              Optional.of(other)));
    }
  }

  /** Where each file comes to lie, so that two of one name get two places. */
  static Map<String, Leaf> placed(List<Place> places) {
    Map<String, Leaf> all = new HashMap<>();
    for (Place place : places) {
      String path = place.path();
      for (int i = 2; all.containsKey(path) && !all.get(path).equals(place.leaf()); i++) {
        int dot = place.path().lastIndexOf('.');
        int end = dot > place.path().lastIndexOf('/') ? dot : place.path().length();
        path = place.path().substring(0, end) + "-" + i + place.path().substring(end);
      }
      all.put(path, place.leaf());
    }
    return all;
  }
}
