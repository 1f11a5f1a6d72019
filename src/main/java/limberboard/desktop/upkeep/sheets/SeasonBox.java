package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import limberboard.desktop.parts.ItemWords;
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
    setRenderer(new ItemWords<AfloatSeason>(season -> "Season " + season.label()));
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
}
