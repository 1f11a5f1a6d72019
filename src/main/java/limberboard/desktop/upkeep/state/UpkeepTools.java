package limberboard.desktop.upkeep.state;

import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.upkeep.entry.LogModel;

/**
 * What aspects of upkeep are made with.
 *
 * @param upkeep boat, day and what is due
 * @param log writes the boat's log
 * @param place what places are made with
 */
public record UpkeepTools(UpkeepModel upkeep, LogModel log, PlaceTools place) {
  /** A reader of sheets, whose links lead to pages. */
  public SheetReader sheets() {
    return place.sheets(id -> place.navigator().openPage(id));
  }
}
