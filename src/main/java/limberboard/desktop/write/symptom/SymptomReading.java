package limberboard.desktop.write.symptom;

import limberboard.writing.PageText;
import limberboard.writing.typing.PageTyping;

/** Reads a page's text as it is typed. Called off the event thread, one call at a time. */
@FunctionalInterface
public interface SymptomReading {
  /** What it says and what is wrong with it. */
  PageTyping.Read read(PageText text);
}
