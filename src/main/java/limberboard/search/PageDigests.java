package limberboard.search;

import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;

/**
 * The digests of a library's pages, remembered from one snapshot to the next: a page that is the
 * same object as before, in a library whose materials and zones are called as before, is not read
 * again. Belongs to one thread at a time.
 */
final class PageDigests {
  private byte[] titlesBefore = {};
  private Map<Page<?>, byte[]> before = new IdentityHashMap<>();

  /** Page id to digest, for all pages but those whose words stand in letters only. */
  Map<String, byte[]> of(Library library, Titles titles) {
    byte[] titlesNow = titles.digest();
    if (!Arrays.equals(titlesNow, titlesBefore)) {
      before = new IdentityHashMap<>();
    }
    Map<Page<?>, byte[]> now = new IdentityHashMap<>();
    Map<String, byte[]> byId = new HashMap<>();
    for (Page<?> page : library.pages()) {
      if (page.kind() == Kind.WORDING) {
        continue;
      }
      byte[] known = before.get(page);
      byte[] digest = known == null ? SearchedText.of(page, titles).digest() : known;
      now.put(page, digest);
      byId.put(page.id(), digest);
    }
    titlesBefore = titlesNow;
    before = now;
    return byId;
  }
}
