package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.page.Page;
import limberboard.library.value.RopeEnd;
import limberboard.rigging.Pull;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
import limberboard.rigging.RopeTotal;
import limberboard.rigging.RunningRigging;
import limberboard.rigging.Thickness;

/** A running-rigging list as {@code rigging --json} prints it; the keys are documented and stay. */
record RiggingView(
    String boat,
    String model,
    String on,
    List<CautionView> cautions,
    List<RopeView> ropes,
    List<TotalView> totals) {

  static RiggingView of(RunningRigging rigging) {
    return new RiggingView(
        rigging.fitting().boat().id(),
        rigging.fitting().boat().model().id(),
        rigging.fitting().on().toString(),
        CautionView.of(rigging.cautions()),
        rigging.ropes().stream().map(rope -> RopeView.of(rope, rigging)).toList(),
        rigging.totals().stream().map(TotalView::of).toList());
  }

  /** A rope; what is open is null and has a sentence. */
  record RopeView(
      String id,
      String title,
      String group,
      String purpose,
      int count,
      Optional<Double> lengthMetres,
      Optional<Double> cutMetres,
      String lengthSum,
      List<String> missing,
      Optional<Double> diameterMillimetres,
      String construction,
      Optional<String> material,
      List<String> ends,
      Optional<Double> loadNewtons,
      String loadSum,
      Optional<Double> neededNewtons,
      Optional<Double> breakingNewtons,
      String diameterSum,
      List<String> open,
      List<String> cautions) {

    static RopeView of(Rope rope, RunningRigging rigging) {
      Optional<RopeLength.Cut> cut = as(RopeLength.Cut.class, rope.length());
      Optional<Thickness.Chosen> chosen = as(Thickness.Chosen.class, rope.thickness());
      return new RopeView(
          rope.id(),
          rope.title(),
          rope.group().word(),
          rope.purpose(),
          rope.count(),
          cut.map(known -> rounded(known.metres())),
          cut.map(known -> rounded(known.cut())),
          rope.length().working(),
          rope.missing(),
          chosen.map(Thickness.Chosen::millimetres),
          rope.construction().word(),
          rope.material().map(Page::id),
          rope.ends().stream().map(RopeEnd::word).toList(),
          as(Pull.Reckoned.class, rope.pull()).map(pull -> rounded(pull.newtons())),
          as(Pull.Reckoned.class, rope.pull()).map(Pull.Reckoned::source).orElse(""),
          chosen.map(Thickness.Chosen::needed).filter(n -> n > 0).map(RopeView::rounded),
          chosen.map(known -> rounded(known.breaking())),
          chosen.map(Thickness.Chosen::working).orElse(""),
          rope.open(),
          CautionView.ids(rigging.cautions(rope)));
    }

    private static <T> Optional<T> as(Class<T> type, Object value) {
      return Optional.of(value).filter(type::isInstance).map(type::cast);
    }

    /** To a thousandth: finer digits are the computer's, not the boat's. */
    private static double rounded(double value) {
      return Math.round(value * 1000) / 1000.0;
    }
  }

  /** What to buy of one kind. */
  record TotalView(
      String construction,
      double diameterMillimetres,
      double metres,
      Optional<String> material,
      List<PieceView> pieces) {
    static TotalView of(RopeTotal total) {
      return new TotalView(
          total.construction().word(),
          total.millimetres(),
          RopeView.rounded(total.metres()),
          total.material().map(Page::id),
          total.pieces().stream()
              .map(p -> new PieceView(p.title(), p.count(), RopeView.rounded(p.metres())))
              .toList());
    }
  }

  /** Pieces of one rope. */
  record PieceView(String title, int count, double metres) {}
}
