package limberboard.desktop.write.state;

import java.io.IOException;
import java.util.List;
import limberboard.library.file.WorkspaceFolders;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;

/** Keeps text that is not saved until next time; off the event thread. */
public interface TextStore {
  /** Keeps nothing. */
  TextStore NONE =
      new TextStore() {
        @Override
        public void keep(KeptText text) {
          // nothing is kept
        }

        @Override
        public void forget(String path) {
          // nothing is kept
        }

        @Override
        public void forget(KeptTexts.Offered offered) {
          // nothing is kept
        }

        @Override
        public List<KeptTexts.Offered> left() {
          return List.of();
        }
      };

  /**
   * Keeps a text.
   *
   * @throws IOException when it cannot be written
   */
  void keep(KeptText text) throws IOException;

  /**
   * Forgets what this sitting has kept of a page.
   *
   * @throws IOException when it cannot be taken away
   */
  void forget(String path) throws IOException;

  /**
   * Forgets a text of an earlier sitting.
   *
   * @throws IOException when it cannot be taken away
   */
  void forget(KeptTexts.Offered offered) throws IOException;

  /**
   * What earlier sittings have left.
   *
   * @throws IOException when it cannot be looked at
   */
  List<KeptTexts.Offered> left() throws IOException;

  /** Keeps them with these. */
  static TextStore of(KeptTexts kept, WorkspaceFolders folders) {
    return new TextStore() {
      @Override
      public void keep(KeptText text) throws IOException {
        kept.keep(text);
      }

      @Override
      public void forget(String path) throws IOException {
        kept.forget(path);
      }

      @Override
      public void forget(KeptTexts.Offered offered) throws IOException {
        kept.forget(offered);
      }

      @Override
      public List<KeptTexts.Offered> left() throws IOException {
        return kept.left(folders);
      }
    };
  }
}
