package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Labels and fields in two columns. */
public final class Form extends JPanel {

  private static final String WIDE = "limberboard.wide";

  /**
   * An empty form.
   *
   * @param gap between lines and columns, in pixels
   */
  public Form(int gap) {
    super(new FormLayout(gap));
    setOpaque(false);
  }

  /** Adds a line; the label names the control. */
  public void line(String label, JComponent control, JComponent field) {
    JLabel name = new JLabel(label);
    name.setLabelFor(control);
    control.getAccessibleContext().setAccessibleName(label);
    add(name);
    add(field);
  }

  /** Adds a line over both columns. */
  public void wide(JComponent component) {
    component.putClientProperty(WIDE, true);
    add(component);
    add(Box.createHorizontalBox());
  }

  static boolean isWide(Component component) {
    return component instanceof JComponent wide && wide.getClientProperty(WIDE) != null;
  }

  /** Always computed, because it depends on the width that is about to be given. */
  @Override
  public Dimension getPreferredSize() {
    return isPreferredSizeSet() ? super.getPreferredSize() : getLayout().preferredLayoutSize(this);
  }
}
