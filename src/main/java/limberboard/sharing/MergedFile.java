package limberboard.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;
import limberboard.sharing.merge.MergedText;

/** What is to become of one file. */
sealed interface MergedFile {

  /** What is open about it. */
  List<Conflict> conflicts();

  /** One that is taken as a version has it. */
  record Taken(String path, Leaf leaf) implements MergedFile {
    @Override
    public List<Conflict> conflicts() {
      return List.of();
    }
  }

  /**
   * One whose text is brought together.
   *
   * @param path where it lies, unless its name is open
   * @param name what is open about its name
   */
  record Text(String path, Optional<Conflict> name, Leaf like, MergedText text)
      implements MergedFile {
    @Override
    public List<Conflict> conflicts() {
      List<Conflict> all = new ArrayList<>(name.stream().toList());
      all.addAll(text.conflicts());
      return all;
    }

    /** Where it lies when all is settled. */
    String path(Function<Conflict, Choice> choice) {
      return name.map(open -> open.text(choice.apply(open))).orElse(path);
    }
  }

  /** One of which only the whole can be chosen: a picture, or a page that one side took away. */
  record Whole(
      Conflict conflict, Optional<Place> before, Optional<Place> ours, Optional<Place> theirs)
      implements MergedFile {
    @Override
    public List<Conflict> conflicts() {
      return List.of(conflict);
    }

    /** What is there when it is settled. */
    Optional<Place> chosen(Choice choice) {
      return switch (choice) {
        case OURS, BOTH -> ours;
        case THEIRS -> theirs;
        case BEFORE -> before;
      };
    }
  }

  /** A file in its place. */
  record Place(String path, Leaf leaf) {}
}
