package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;

/**
 * A sign, a name and what is said of it: the names of several such rows below each other are
 * equally wide, and where there is little width the words stand below the name.
 */
final class NamedLayout extends PlacedLayout {
  private static final int NAME = 200;
  private static final int LEAST_WORDS = 320;
  private static final int GAP = 8;

  @Override
  int place(Container parent, int width, boolean move) {
    Insets insets = parent.getInsets();
    Component sign = parent.getComponent(0);
    Component name = parent.getComponent(1);
    Component words = parent.getComponent(2);
    Dimension drawn = sign.getPreferredSize();
    int gap = UIScale.scale(GAP);
    int left = drawn.width + gap;
    int room = Math.max(1, width - left);
    int named = UIScale.scale(NAME);
    boolean beside = room - named - gap >= UIScale.scale(LEAST_WORDS);
    int nameWidth = beside ? named : room;
    int nameHeight = Widths.heightAt(name, nameWidth);
    int wordsWidth = beside ? room - named - gap : room;
    int wordsHeight = Widths.heightAt(words, wordsWidth);
    if (move) {
      sign.setBounds(insets.left, insets.top, drawn.width, drawn.height);
      name.setBounds(insets.left + left, insets.top, nameWidth, nameHeight);
      words.setBounds(
          insets.left + left + (beside ? named + gap : 0),
          insets.top + (beside ? 0 : nameHeight),
          wordsWidth,
          wordsHeight);
    }
    return Math.max(
        drawn.height, beside ? Math.max(nameHeight, wordsHeight) : nameHeight + wordsHeight);
  }
}
