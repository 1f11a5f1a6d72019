package limberboard.desktop.tree;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Session;
import limberboard.desktop.read.Papers;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.print.drawing.TreeCard;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.page.CutPage;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;

/**
 * Prints and saves trees and their cards: those that are there, and those of a symptom on the
 * chosen boat, which are worked out for it off the event thread. For the event thread only.
 *
 * @param session tells library and boat
 * @param papers prints and saves
 */
public record TreePapers(Session session, Papers papers) implements TreeOut {
  private static final String TREE = "tree";
  private static final String CARD = "card";

  @Override
  public void print(TreeCut cut) {
    papers.print(name(TREE, cut), () -> new TreeSheet().of(cut));
  }

  @Override
  public void save(TreeCut cut) {
    papers.save(name(TREE, cut), () -> new TreeSheet().of(cut));
  }

  @Override
  public void draw(TreeCut cut) {
    papers.saveText(name(TREE, cut) + ".svg", () -> new TreeDrawing().of(cut));
  }

  @Override
  public void printCard(DiagnosticTree tree) {
    papers.print(name(CARD, TreeCut.all(tree)), () -> card(tree));
  }

  @Override
  public void saveCard(DiagnosticTree tree) {
    papers.save(name(CARD, TreeCut.all(tree)), () -> card(tree));
  }

  private static CutPage card(DiagnosticTree tree) {
    TreeCard cards = new TreeCard();
    return cards.of(cards.cut(tree));
  }

  /** Prints the whole tree of a symptom; without effect when the boat cannot have it. */
  public void printTree(String symptom) {
    of(symptom, TREE, tree -> new TreeSheet().of(tree), papers::print);
  }

  /** Saves the same as PDF. */
  public void saveTree(String symptom) {
    of(symptom, TREE, tree -> new TreeSheet().of(tree), papers::save);
  }

  /** Prints the card of a symptom; without effect when the boat cannot have it. */
  public void printCard(String symptom) {
    of(symptom, CARD, TreePapers::card, papers::print);
  }

  /** Saves the same as PDF. */
  public void saveCard(String symptom) {
    of(symptom, CARD, TreePapers::card, papers::save);
  }

  private void of(
      String symptom,
      String what,
      Function<DiagnosticTree, CutPage> sheet,
      BiConsumer<String, Supplier<CutPage>> to) {
    Workspace workspace = session.workspace();
    Optional<Fitting> boat = session.fitting();
    Optional<Page<Symptom>> page =
        workspace
            .library()
            .symptom(symptom)
            .filter(found -> boat.filter(known -> known.fits(found.head().fits())).isPresent());
    page.ifPresent(
        found ->
            to.accept(
                name(what, symptom, boat.orElseThrow()),
                () -> sheet.apply(tree(workspace, found, boat.orElseThrow()))));
  }

  private static DiagnosticTree tree(Workspace workspace, Page<Symptom> page, Fitting boat) {
    Fault fault = Fault.of(page, boat, workspace.library(), workspace.cases());
    return DiagnosticTree.of(Trace.begin(fault), DiagnosticTree.USUAL_RAREST);
  }

  private static String name(String what, TreeCut cut) {
    Fault fault = cut.tree().from().fault();
    return name(what, fault.page().id(), fault.fitting());
  }

  /** What it is, the symptom, and the boat. */
  private static String name(String what, String symptom, Fitting boat) {
    return what + "-" + symptom + "-" + boat.boat().id();
  }
}
