package limberboard.desktop.tree;

import limberboard.trace.DiagnosticTree;

/** The ways out of the program for a tree. For the event thread only. */
public interface TreeOut {
  /** Prints it by numbers. */
  void print(DiagnosticTree tree);

  /** Saves it by numbers as PDF. */
  void save(DiagnosticTree tree);

  /** Saves it as one drawing. */
  void draw(DiagnosticTree tree);
}
