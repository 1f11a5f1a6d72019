package limberboard.desktop.trace;

import limberboard.desktop.parts.Column;

/** The symptom's cautions at the top while questions are answered. */
final class CautionBand extends Column {
  private final transient TraceModel model;
  private final CautionLines lines;
  private boolean aside;

  /**
   * A band.
   *
   * @param whole shows the whole text of all cautions
   * @param afterwards puts the focus where one goes on
   */
  CautionBand(TraceModel model, Runnable whole, Runnable afterwards) {
    super(0);
    this.model = model;
    this.lines = new CautionLines(model, "cautions", whole, afterwards);
    add(lines);
    model.onChange(this::refresh);
    refresh();
  }

  /** Leaves its room while everything it names is shown elsewhere. */
  void setAside(boolean elsewhere) {
    aside = elsewhere;
    refresh();
  }

  private void refresh() {
    lines.show(model.cautions());
    setVisible(!aside && !model.cautions().isEmpty());
  }
}
