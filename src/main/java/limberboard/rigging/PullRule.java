package limberboard.rigging;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.library.page.RopeLoad;
import limberboard.library.page.RopePlan;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.RopePull;
import limberboard.workings.QuantityWords;
import limberboard.workings.cordage.SailLoad;

/** Pull = sail area × pressure of the wind × share ÷ parts; or a stated force likewise. */
final class PullRule {
  private final Dimensions dimensions;

  PullRule(Dimensions dimensions) {
    this.dimensions = dimensions;
  }

  Pull of(RopePlan rope) {
    if (rope.load().isEmpty()) {
      return new Pull.NotReckoned();
    }
    RopeLoad load = rope.load().get();
    if (!(load.share() > 0 && load.parts() > 0)) {
      return open("the page states a share or a number of parts that cannot be");
    }
    return load.force().isPresent() ? stated(load) : bySail(load);
  }

  private static Pull stated(RopeLoad load) {
    OptionalDouble force = KnownUnit.NEWTONS.of(load.force().get().quantity());
    return force.isPresent() && force.getAsDouble() > 0
        ? reckoned(force.getAsDouble(), "", Figures.force(force.getAsDouble()), load)
        : open("the page states a load that is no force");
  }

  private Pull bySail(RopeLoad load) {
    if (load.by().isEmpty() || load.beaufort().isEmpty()) {
      return open("the page does not say what pulls on it, or in which wind");
    }
    RopePull by = load.by().get();
    List<String> missing = new ArrayList<>();
    for (String name : needed(by)) {
      if (dimensions.metres(name).isEmpty()) {
        missing.add(name);
      }
    }
    if (!missing.isEmpty()) {
      return new Pull.Open(
          missing, String.join("; ", missing.stream().map(dimensions::open).toList()));
    }
    double x = load.fromBoomEnd().map(f -> KnownUnit.METRES.of(f.quantity()).orElse(0)).orElse(0.0);
    if (by == RopePull.MAINSHEET && x >= metres("E")) {
      return open("the mainsheet cannot pull further from the boom's end than the mast");
    }
    return blown(load, by, area(by, x));
  }

  private static Pull blown(RopeLoad load, RopePull by, double area) {
    int beaufort = load.beaufort().get();
    double pressure = SailLoad.pressure(SailLoad.wind(beaufort));
    double newtons = area * pressure;
    String name = words(by) + ", Beaufort " + beaufort;
    String source =
        name
            + ": "
            + Figures.figures(area)
            + " m² × "
            + Figures.figures(pressure)
            + " N/m² = "
            + Figures.force(newtons);
    return reckoned(newtons, source, name, load);
  }

  private static Pull reckoned(double newtons, String source, String name, RopeLoad load) {
    double pull = newtons * load.share() / load.parts();
    String share = load.share() == 1 ? "" : " × " + QuantityWords.plain(load.share());
    String parts = load.parts() == 1 ? "" : " ÷ " + load.parts();
    String working = name + share + parts;
    String value = Figures.force(pull);
    return new Pull.Reckoned(
        pull, source, working.equals(value) ? working : working + " = " + value);
  }

  private static Pull open(String why) {
    return new Pull.Open(List.of(), why);
  }

  private static List<String> needed(RopePull by) {
    return switch (by) {
      case HEADSAIL, SPINNAKER -> List.of("I", "J");
      case MAINSAIL, MAINSHEET -> List.of("P", "E");
    };
  }

  private double area(RopePull by, double x) {
    return switch (by) {
      case HEADSAIL -> SailLoad.headsailArea(metres("I"), metres("J"));
      case SPINNAKER -> SailLoad.spinnakerArea(metres("I"), metres("J"));
      case MAINSAIL -> SailLoad.mainsailArea(metres("P"), metres("E"));
      case MAINSHEET -> SailLoad.mainsheetArea(metres("P"), metres("E"), x);
    };
  }

  private double metres(String name) {
    return dimensions.metres(name).orElse(Double.NaN);
  }

  private static String words(RopePull by) {
    return switch (by) {
      case HEADSAIL -> "headsail";
      case SPINNAKER -> "spinnaker";
      case MAINSAIL -> "mainsail";
      case MAINSHEET -> "mainsheet";
    };
  }
}
