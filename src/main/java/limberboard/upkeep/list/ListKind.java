package limberboard.upkeep.list;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.Phase;
import limberboard.library.value.Word;

/** Which list of the year. */
public enum ListKind implements Word {
  /** From the winter shed to the first sail. */
  FITTING_OUT(
      List.of(Phase.ASHORE_MAST_DOWN, Phase.ASHORE_MAST_UP, Phase.AFLOAT, Phase.UNDER_SAIL)),
  /** At the end of the season. */
  LAYING_UP(List.of(Phase.LAY_UP));

  private final List<Phase> phases;

  ListKind(List<Phase> phases) {
    this.phases = phases;
  }

  /** The parts of the list, in order. */
  public List<Phase> phases() {
    return phases;
  }

  /** The kind written this way, {@code fitting-out} or {@code laying-up}. */
  public static Optional<ListKind> ofWord(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
