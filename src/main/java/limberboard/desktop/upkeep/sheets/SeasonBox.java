package limberboard.desktop.upkeep.sheets;

import java.awt.Component;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import limberboard.upkeep.AfloatSeason;

/** Chooses a season of the boat. */
final class SeasonBox extends JComboBox<AfloatSeason> {
  private transient List<AfloatSeason> shown = List.of();
  private boolean showing;

  /**
   * A box without seasons.
   *
   * @param choose takes the year in which the chosen season begins
   */
  SeasonBox(String name, IntConsumer choose) {
    setName(name);
    getAccessibleContext().setAccessibleName("Season");
    setRenderer(new Spoken());
    addActionListener(
        e -> {
          if (!showing && getSelectedItem() instanceof AfloatSeason season) {
            choose.accept(season.year());
          }
        });
  }

  /** Offers seasons, one of which is chosen. */
  void show(List<AfloatSeason> seasons, int year) {
    showing = true;
    if (!seasons.equals(shown)) {
      shown = List.copyOf(seasons);
      setModel(new DefaultComboBoxModel<>(shown.toArray(AfloatSeason[]::new)));
    }
    shown.stream().filter(season -> season.year() == year).forEach(this::setSelectedItem);
    setEnabled(!shown.isEmpty());
    showing = false;
  }

  /** Seasons in words. */
  private static final class Spoken extends DefaultListCellRenderer {
    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      Object words = value instanceof AfloatSeason season ? "Season " + season.label() : " ";
      return super.getListCellRendererComponent(list, words, index, selected, focused);
    }
  }
}
