package limberboard.drill.file;

import java.util.List;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/** A student's file; the keys are the components' names. */
record StudentEntry(@Required String student, @Required String key, List<MarkedEntry> drills) {
  StudentEntry {
    drills = EmptyValues.list(drills);
  }
}
