package limberboard.desktop.tree;

import limberboard.trace.DiagnosticTree;
import limberboard.trace.TreeCut;

/** The ways out of the program for a tree. For the event thread only. */
public interface TreeOut {
  /** Prints it by numbers, whole or as many levels as are wanted. */
  void print(TreeCut cut);

  /** Saves the same as PDF. */
  void save(TreeCut cut);

  /** Saves the same as one drawing. */
  void draw(TreeCut cut);

  /** Prints as much of it as goes on one sheet. */
  void printCard(DiagnosticTree tree);

  /** Saves the same as PDF. */
  void saveCard(DiagnosticTree tree);
}
