/**
 * Search over all pages of the library, in everyday words.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>{@link limberboard.search.SearchIndex#open} a workspace's index;
 *   <li>{@link limberboard.search.SearchIndex#update} it whenever there is a new library snapshot:
 *       only pages that changed are written;
 *   <li>{@link limberboard.search.SearchIndex#find} with a {@link limberboard.search.SearchQuery}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.library.*;
 * import limberboard.search.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path page = folders.articles().resolve("topics/splicing.md");
 * Files.writeString(page, "---\ntitle: Splicing an eye\n---\nWork the strands under.\n");
 * try (SearchIndex index = SearchIndex.open(folders)) {
 *   index.update(new LibraryReader(folders).read());
 *   assert index
 *       .find(SearchQuery.of("how do I splice this"))
 *       .hits()
 *       .get(0)
 *       .id()
 *       .equals("splicing");
 *   assert index.find(SearchQuery.of("splicng")).didYouMean().isPresent();
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> A text is read word by word into slots ({@code QuestionReader}): each
 * slot holds everything that may stand for one thing asked, from the word's stem over synonyms and
 * trade spellings to words that a misspelt one resembles. Pages are scored by which slots they have
 * and where (BM25 without its own word rarity, which is judged once for all fields). Lucene
 * proposes a few pages of each sort, and {@code Ranking} orders those by what they are, how nearly
 * the question is their title, and whether they fit the boat. Nothing in a text is syntax. Synonyms
 * are marks that the index carries beside the words, so a phrase counts like a word; other words
 * files mean another index. Why it is so: {@code docs/decisions/0003-search.md}.
 *
 * <p><b>Persistence.</b> Everything in the index folder is derived and may be deleted. Every commit
 * says what it was made by; one that is damaged or made by something else is built anew. The
 * writer's lock is held only while writing, and readers see committed states only.
 *
 * <p><b>Threads.</b> An index may be used by several threads. Opening, updating and finding read
 * files, so they do not belong on the event thread.
 */
package limberboard.search;
