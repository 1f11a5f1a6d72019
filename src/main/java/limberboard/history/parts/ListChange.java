package limberboard.history.parts;

import java.util.List;
import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.HashedSequence;
import org.eclipse.jgit.diff.HashedSequenceComparator;
import org.eclipse.jgit.diff.HashedSequencePair;
import org.eclipse.jgit.diff.MyersDiff;
import org.eclipse.jgit.diff.Sequence;
import org.eclipse.jgit.diff.SequenceComparator;

/** How one list of texts became another, by the shortest way (Myers 1986). */
public final class ListChange {
  private ListChange() {}

  /** The stretches that differ, in order; none when the lists are equal. */
  public static List<Stretch> between(List<String> before, List<String> now) {
    HashedSequencePair<Texts> pair =
        new HashedSequencePair<>(new Same(), new Texts(before), new Texts(now));
    HashedSequenceComparator<Texts> comparator = pair.getComparator();
    HashedSequence<Texts> a = pair.getA();
    HashedSequence<Texts> b = pair.getB();
    return MyersDiff.INSTANCE.diff(comparator, a, b).stream().map(ListChange::stretch).toList();
  }

  private static Stretch stretch(Edit edit) {
    return new Stretch(edit.getBeginA(), edit.getEndA(), edit.getBeginB(), edit.getEndB());
  }

  private static final class Texts extends Sequence {
    private final List<String> all;

    Texts(List<String> all) {
      this.all = all;
    }

    @Override
    public int size() {
      return all.size();
    }
  }

  private static final class Same extends SequenceComparator<Texts> {
    @Override
    public boolean equals(Texts a, int ai, Texts b, int bi) {
      return a.all.get(ai).equals(b.all.get(bi));
    }

    @Override
    public int hash(Texts texts, int at) {
      return texts.all.get(at).hashCode();
    }
  }
}
