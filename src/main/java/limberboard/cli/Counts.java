package limberboard.cli;

import limberboard.boat.Workspace;
import limberboard.library.Library;
import limberboard.library.page.Caution;
import limberboard.library.page.Course;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.Topic;

/**
 * How much a workspace holds.
 *
 * @param models model pages
 * @param boats boats
 * @param symptoms symptom pages
 * @param causes causes on them
 * @param checks checks on them
 * @param procedures procedure pages
 * @param materials material and tool pages
 * @param cautions caution pages
 * @param topics topic pages
 * @param courses course pages
 * @param cases recorded cases
 */
record Counts(
    int models,
    int boats,
    int symptoms,
    int causes,
    int checks,
    int procedures,
    int materials,
    int cautions,
    int topics,
    int courses,
    int cases) {

  static Counts of(Workspace workspace) {
    Library library = workspace.library();
    return new Counts(
        library.all(Model.class).size(),
        workspace.boats().size(),
        library.all(Symptom.class).size(),
        library.all(Symptom.class).stream().mapToInt(s -> s.details().causes().size()).sum(),
        library.all(Symptom.class).stream().mapToInt(s -> s.details().checks().size()).sum(),
        library.all(Procedure.class).size(),
        library.all(Material.class).size(),
        library.all(Caution.class).size(),
        library.all(Topic.class).size(),
        library.all(Course.class).size(),
        workspace.cases().size());
  }

  String sentence() {
    return models
        + " models, "
        + boats
        + " boats, "
        + symptoms
        + " symptoms with "
        + causes
        + " causes and "
        + checks
        + " checks, "
        + procedures
        + " procedures, "
        + materials
        + " materials and tools, "
        + cautions
        + " cautions, "
        + topics
        + " topics, "
        + courses
        + " courses, "
        + cases
        + " cases";
  }
}
