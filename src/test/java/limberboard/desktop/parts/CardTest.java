package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CardTest {
  @Test
  void aCardIsSpokenAsOneSentence() {
    Card card = Card.of("Dunlin", "built 2014").ofKind("boat").noting("Fits");
    assertThat(card.spoken()).isEqualTo("Dunlin, boat, built 2014, Fits");
  }

  @Test
  void choosingWithoutASelectionTakesTheFirstEntry() throws Exception {
    List<String> chosen = new ArrayList<>();
    EventQueue.invokeAndWait(
        () -> {
          CardList<String> list =
              new CardList<String>("Words", word -> Card.of(word, "")).onChoose(chosen::add);
          list.show(List.of("one", "two"));
          list.chooseSelected();
          list.move(1);
          list.chooseSelected();
          list.move(9);
          assertThat(list.selected()).contains("two");
        });
    assertThat(chosen).containsExactly("one", "two");
  }

  @Test
  void whatWasSelectedStaysSelectedWhenItIsStillThere() throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          CardList<String> list = new CardList<>("Words", word -> Card.of(word, ""));
          list.show(List.of("one", "two"));
          list.setSelectedIndex(1);
          list.show(List.of("zero", "two", "three"));
          assertThat(list.selected()).contains("two");
          list.show(List.of("zero"));
          assertThat(list.selected()).isEmpty();
        });
  }

  @Test
  void entriesGrowHigherWhenTheListGrowsNarrower() throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          CardList<String> list = new CardList<>("Words", word -> Card.of(word, word.repeat(20)));
          list.show(List.of("a leak in the "));
          list.setSize(900, 400);
          list.setFixedCellHeight(5);
          list.setFixedCellHeight(-1);
          int wide = list.getCellBounds(0, 0).height;
          list.setSize(200, 400);
          list.setFixedCellHeight(5);
          list.setFixedCellHeight(-1);
          assertThat(list.getCellBounds(0, 0).height).isGreaterThan(wide);
        });
  }
}
