package limberboard.drill.file;

import java.util.List;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/** A course as its file has it; the keys are the components' names. */
record CourseEntry(@Required String title, List<DrillEntry> drills) {
  CourseEntry {
    drills = EmptyValues.list(drills);
  }
}
