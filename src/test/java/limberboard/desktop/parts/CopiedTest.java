package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Test;

class CopiedTest {
  @Test
  void handsOutPlainTextAndHtml() throws Exception {
    Copied copied = Copied.of("Oil < 46 & more\nsecond");
    assertThat(copied.getTransferData(DataFlavor.stringFlavor))
        .isEqualTo("Oil < 46 & more\nsecond");
    assertThat(copied.getTransferData(DataFlavor.allHtmlFlavor))
        .asString()
        .contains("<p>Oil &lt; 46 &amp; more</p><p>second</p>");
    assertThatThrownBy(() -> copied.getTransferData(DataFlavor.imageFlavor))
        .isInstanceOf(UnsupportedFlavorException.class);
  }

  @Test
  void aListCopiesItsEntryAsItsCardReads() throws Exception {
    CardList<String> list =
        new CardList<>("Words", word -> Card.of(word, "said of it").ofKind("kind").noting("note"));
    list.show(List.of("one", "two"));
    list.setSelectedIndex(1);
    java.awt.datatransfer.Clipboard clipboard = new java.awt.datatransfer.Clipboard("test");
    list.getTransferHandler().exportToClipboard(list, clipboard, TransferHandler.COPY);
    assertThat(clipboard.getData(DataFlavor.stringFlavor))
        .isEqualTo("two (kind)\nsaid of it\nnote");
  }

  @Test
  void anEntryOfAListIsAListItemThatSaysEverything() {
    CardList<String> list = new CardList<>("Words", word -> Card.of(word, "said of it"));
    list.show(List.of("one", "two"));
    AccessibleContext entry =
        list.getAccessibleContext().getAccessibleChild(1).getAccessibleContext();
    assertThat(entry.getAccessibleRole()).isEqualTo(AccessibleRole.LIST_ITEM);
    assertThat(entry.getAccessibleName()).isEqualTo("two, said of it");
    assertThat(entry.getAccessibleChildrenCount()).isZero();
  }
}
