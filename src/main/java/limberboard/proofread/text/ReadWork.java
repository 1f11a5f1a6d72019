package limberboard.proofread.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Check;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;

/**
 * Work with steps and lists: a procedure, or a check of a symptom.
 *
 * @param page the page it stands on
 * @param pointer where it stands in the header, as a JSON pointer; empty for a procedure
 * @param name what it is called
 * @param passages what is done, in order
 * @param tools ids of its tools, in the order of the list
 * @param materials ids of its materials, in the order of the list
 * @param cautions ids of all cautions that it carries, whatever brings them
 * @param access ids of what is opened first
 */
public record ReadWork(
    Page<?> page,
    String pointer,
    String name,
    List<TextPiece> passages,
    List<String> tools,
    List<String> materials,
    Set<String> cautions,
    List<String> access) {

  /** Copies the lists. */
  public ReadWork {
    passages = List.copyOf(passages);
    tools = List.copyOf(tools);
    materials = List.copyOf(materials);
    cautions = Set.copyOf(cautions);
    access = List.copyOf(access);
  }

  /**
   * The work on a page; none on pages of other kinds.
   *
   * @param passages the passages of the page
   */
  public static List<ReadWork> of(Page<?> page, List<TextPiece> passages, Library library) {
    List<ReadWork> jobs = new ArrayList<>();
    page.as(Procedure.class).map(work -> procedure(work, passages, library)).ifPresent(jobs::add);
    page.as(Symptom.class)
        .ifPresent(
            symptom -> {
              for (int i = 0; i < symptom.details().checks().size(); i++) {
                jobs.add(check(symptom, i, library));
              }
            });
    return jobs;
  }

  private static ReadWork procedure(
      Page<Procedure> page, List<TextPiece> passages, Library library) {
    Procedure work = page.details();
    return new ReadWork(
        page,
        "",
        page.title(),
        passages,
        tools(work.tools()),
        materials(work),
        ids(new WorkCautions(library, Optional.empty()).of(page)),
        work.access());
  }

  private static List<String> tools(List<ToolUse> uses) {
    return uses.stream().map(ToolUse::use).toList();
  }

  private static List<String> materials(Procedure work) {
    return work.materials().stream().map(MaterialUse::use).toList();
  }

  private static Set<String> ids(List<WorkCaution> cautions) {
    return cautions.stream().map(WorkCaution::id).collect(Collectors.toSet());
  }

  private static ReadWork check(Page<Symptom> page, int index, Library library) {
    Check check = page.details().checks().get(index);
    WorkCautions cautions = new WorkCautions(library, Optional.empty());
    List<TextPiece> passages = new ArrayList<>();
    check.makeSafe().ifPresent(text -> passages.add(said(text)));
    passages.add(said(check.how()));
    return new ReadWork(
        page,
        "/checks/" + index,
        check.ask(),
        passages,
        tools(check.tools()),
        List.of(),
        ids(WorkCautions.joined(List.of(cautions.first(page.details()), cautions.of(check)))),
        check.access());
  }

  private static TextPiece said(String text) {
    return TextPiece.of(1, text, 0, "", List.of(), List.of());
  }

  /** Whether a tool or material is on one of its lists. */
  public boolean lists(String id) {
    return tools.contains(id) || materials.contains(id);
  }

  /** Whether it is a check in a header, which has no lines of a body. */
  public boolean isCheck() {
    return !pointer.isEmpty();
  }

  /** The passages that are steps. */
  public List<TextPiece> steps() {
    return passages.stream().filter(TextPiece::isStep).toList();
  }
}
