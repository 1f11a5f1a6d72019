package limberboard.desktop.base;

import java.util.List;
import java.util.Optional;
import limberboard.trace.TrailStep;

/** The ways from one place of the window to another. For the event thread only. */
public interface Navigator {
  /** Shows a page of the library. */
  void openPage(String id);

  /**
   * Goes where a page is written, with the caret at a heading.
   *
   * @param id the page
   * @param heading as it reads; empty for the beginning
   */
  void writePage(String id, Optional<String> heading);

  /**
   * Goes where a page is written, with the caret on a line; also one that cannot be read as a page
   * just now.
   *
   * @param file of the page, relative to the workspace; without effect for a file of no page
   * @param line from 1; 0 for the beginning
   */
  void writeLine(String file, int line);

  /** Asks who has read a page in full, and notes it in its header. */
  void readInFull(String page);

  /** Shows the history of a page. */
  void history(String page);

  /** Shows a part of the place for the whole workspace, by its name. */
  void workspace(String part);

  /** Starts tracing a symptom for the chosen boat, or shows its page when no boat is chosen. */
  void trace(String symptom);

  /**
   * Chooses a boat and traces a symptom on it, with what an owner has found out already added to
   * what its trace has.
   */
  void trace(String boat, String symptom, List<TrailStep> steps);

  /** Shows a boat's particulars. */
  void openBoat(String id);

  /** Goes where the work of a page is written into the chosen boat's log. */
  void logWork(String page);

  /** Goes where the log of a boat that was bought is begun, and chooses that boat. */
  void beginLog(String boat);

  /** Goes where a new boat is entered. */
  void newBoat();
}
