package limberboard.desktop.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.trace.CautionsRead;

/** Where it is kept which cautions have been read. For the event thread only. */
public interface CautionReading {
  /** What has been read so far. */
  CautionsRead read();

  /** These have been read now. */
  void read(List<WorkCaution> cautions);

  /** Asks a caution's question again. */
  void askAgain(WorkCaution caution);

  /** Calls the listener after each change. */
  void onChange(Runnable listener);

  /** What the button says that says that cautions have been read. */
  default String readTitle() {
    return "Read";
  }

  /** What that button does. */
  default String readTip() {
    return "Folds what has been read to a line (F8)";
  }
}
