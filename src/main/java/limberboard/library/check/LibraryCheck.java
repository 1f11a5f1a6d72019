package limberboard.library.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import limberboard.library.file.FileNet;
import limberboard.library.page.Caution;
import limberboard.library.page.Course;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.SumUse;
import limberboard.library.page.Symptom;
import limberboard.library.page.Wording;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;

/** Checks every page against the rest of the library. */
public final class LibraryCheck {
  private final KnownNames names;
  private final LinkCheck links;
  private final FigureCheck figures;
  private final HeadCheck heads = new HeadCheck();
  private final SymptomCheck symptoms = new SymptomCheck();
  private final ProcedureCheck procedures = new ProcedureCheck();
  private final MaterialCheck materials = new MaterialCheck();
  private final ModelCheck models = new ModelCheck();
  private final CautionCheck cautions = new CautionCheck();
  private final WordingCheck wordings = new WordingCheck();
  private final CourseCheck courses = new CourseCheck();

  private final List<FurtherCheck> further;

  public LibraryCheck(KnownNames names, LinkCheck links, List<FurtherCheck> further) {
    this.names = names;
    this.links = links;
    this.figures = new FigureCheck(links);
    this.further = further;
  }

  /** The problems of these pages, each file's by line. */
  public List<Problem> check(Collection<ParsedPage> pages) {
    List<Problem> problems = new ArrayList<>();
    OrderCheck order = new OrderCheck(pages);
    RoundCheck rounds = new RoundCheck(pages);
    for (ParsedPage parsed : pages) {
      problems.addAll(FileNet.read(parsed.path(), () -> check(parsed, order, rounds), List::of));
    }
    return problems;
  }

  /**
   * The problems of one page among others.
   *
   * @param others all other pages, or at least those of procedures
   */
  public List<Problem> check(ParsedPage page, Collection<ParsedPage> others) {
    List<ParsedPage> all = new ArrayList<>(others);
    all.add(page);
    return FileNet.read(
        page.path(), () -> check(page, new OrderCheck(all), new RoundCheck(all)), List::of);
  }

  private List<Problem> check(ParsedPage parsed, OrderCheck order, RoundCheck rounds) {
    Report report = parsed.report();
    parsed.page().ifPresent(page -> check(parsed, page, report));
    parsed
        .page()
        .flatMap(page -> page.as(Procedure.class))
        .ifPresent(
            work -> {
              order.check(work, report);
              rounds.check(work, names, report);
            });
    links.check(parsed, report);
    figures.check(parsed, report);
    return report.problems();
  }

  private void check(ParsedPage parsed, Page<?> page, Report report) {
    heads.check(page, parsed.scan().headings(), names, report);
    workings(page.details().workings(), report);
    further.forEach(check -> check.check(page, new PageFindings(names, report)));
    check(page, Symptom.class, symptoms, report);
    check(page, Procedure.class, procedures, report);
    check(page, Material.class, materials, report);
    check(page, Model.class, models, report);
    check(page, Caution.class, cautions, report);
    check(page, Wording.class, wordings, report);
    check(page, Course.class, courses, report);
    if (page.details() instanceof Symptom symptom) {
      pictures(parsed, symptom, report);
    } else if (page.details() instanceof Model model) {
      links.headerPicture(parsed, model.drawing().profile(), "/drawing/profile", report);
      links.headerPicture(parsed, model.drawing().deck(), "/drawing/deck", report);
    }
  }

  private <D extends Details> void check(
      Page<?> page, Class<D> kind, PageCheck<D> check, Report report) {
    page.as(kind).ifPresent(narrow -> check.check(narrow, names, report));
  }

  private void workings(List<SumUse> workings, Report report) {
    for (int i = 0; i < workings.size(); i++) {
      names.condition(workings.get(i).fits(), "/workings/" + i + "/fits", report);
    }
  }

  private void pictures(ParsedPage parsed, Symptom symptom, Report report) {
    for (int i = 0; i < symptom.checks().size(); i++) {
      String pointer = "/checks/" + i + "/picture";
      symptom
          .checks()
          .get(i)
          .picture()
          .ifPresent(picture -> links.headerPicture(parsed, picture, pointer, report));
    }
  }
}
