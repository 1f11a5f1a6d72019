package limberboard.desktop.upkeep.timeline;

import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.drawing.TimeLineDrawing;
import limberboard.print.picture.Look;
import limberboard.print.picture.SvgPicture;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.Upkeep;

/**
 * The time line of the coming seasons, worked out and drawn only while it is looked at, without
 * Swing. For the event thread only.
 */
public final class TimeLineModel extends Observed {
  /** How many seasons are shown. */
  static final int SEASONS = 3;

  private final UpkeepModel upkeep;
  private final Latest latest;
  private Optional<Asked> asked = Optional.empty();
  private Optional<Drawn> drawn = Optional.empty();
  private boolean wanted;
  private boolean dark;
  private boolean inWords;

  /**
   * What is shown.
   *
   * @param of what it was drawn of
   * @param line the work by seasons
   * @param picture the drawing
   */
  public record Drawn(Upkeep of, TimeLine line, Optional<SvgPicture> picture) {}

  private record Asked(Upkeep upkeep, boolean dark) {
    boolean isSame(Asked other) {
      return upkeep == other.upkeep && dark == other.dark;
    }
  }

  public TimeLineModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.latest = new Latest(background);
    upkeep.onChange(this::follow);
  }

  /** Says whether it is looked at, and on what ground. */
  public void want(boolean now, boolean onDark) {
    wanted = now;
    dark = onDark;
    follow();
  }

  /** What is shown; empty until it has been drawn for the chosen boat. */
  public Optional<Drawn> drawn() {
    return drawn;
  }

  /** Whether it is shown in words rather than drawn. */
  boolean isInWords() {
    return inWords;
  }

  void inWords(boolean words) {
    inWords = words;
    tell();
  }

  private void follow() {
    Optional<Upkeep> known = upkeep.upkeep();
    if (known.isEmpty()) {
      latest.drop();
      asked = Optional.empty();
      drawn = Optional.empty();
    } else if (wanted) {
      draw(new Asked(known.get(), dark));
    }
    tell();
  }

  private void draw(Asked now) {
    if (asked.filter(now::isSame).isPresent()) {
      return;
    }
    asked = Optional.of(now);
    latest.run(
        "Drawing the time line",
        () -> {
          TimeLine line = TimeLine.of(now.upkeep(), SEASONS);
          Look look = now.dark() ? Look.DARK : Look.LIGHT;
          return new Drawn(now.upkeep(), line, SvgPicture.parse(TimeLineDrawing.whole(line), look));
        },
        found -> {
          drawn = Optional.of(found);
          tell();
        });
  }

  /** The place's own model. */
  UpkeepModel upkeep() {
    return upkeep;
  }
}
