package limberboard.search;

import java.util.List;
import java.util.stream.Stream;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.util.BytesRef;

/** Makes the index's documents, one a page. */
final class PageDocuments {
  /** The page's id. */
  static final String ID = "id";

  /** The page's kind. */
  static final String KIND = "kind";

  /** The page's title as it stands. */
  static final String WHOLE_TITLE = "whole-title";

  /** The digest of the page's text. */
  static final String DIGEST = "digest";

  /** What passages are cut from: one piece of text a line. */
  static final String TEXT = "text";

  private static final int LONGEST_TITLE = 2_000;
  private static final FieldType SEARCHED = type(IndexOptions.DOCS_AND_FREQS, false);
  private static final FieldType SPELT = type(IndexOptions.DOCS, true);

  private PageDocuments() {}

  private static FieldType type(IndexOptions options, boolean omitNorms) {
    FieldType type = new FieldType();
    type.setTokenized(true);
    type.setIndexOptions(options);
    type.setOmitNorms(omitNorms);
    type.freeze();
    return type;
  }

  /** The document of a page. */
  static Document of(SearchedText page, byte[] digest, PageNames names) {
    MarkdownText body = MarkdownText.of(page.markdown());
    Document document = new Document();
    keyword(document, ID, page.id());
    keyword(document, KIND, page.kind().name());
    keyword(document, FitKeys.FIELD, page.fits());
    document.add(new BinaryDocValuesField(WHOLE_TITLE, new BytesRef(cut(page.title()))));
    document.add(new BinaryDocValuesField(DIGEST, new BytesRef(digest)));
    document.add(new BinaryDocValuesField(PageNames.FIELD, new BytesRef(names.kept(page))));
    searched(document, IndexField.TITLE, List.of(page.title()));
    searched(document, IndexField.SAID, page.said());
    searched(document, IndexField.SUMMARY, List.of(page.summary()));
    searched(document, IndexField.TOLD, page.told());
    searched(document, IndexField.CAUSES, page.causes());
    searched(document, IndexField.HEADINGS, body.headings());
    searched(document, IndexField.BODY, body.blocks());
    searched(document, IndexField.BODY, page.more());
    searched(document, IndexField.USES, page.uses());
    searched(document, IndexField.PLACE, page.place());
    document.add(new StoredField(TEXT, Analysis.wellFormed(shown(page, body))));
    return document;
  }

  private static String cut(String title) {
    return title.substring(0, Math.min(title.length(), LONGEST_TITLE));
  }

  private static void keyword(Document document, String field, String value) {
    document.add(new StringField(field, value, Field.Store.NO));
    document.add(new BinaryDocValuesField(field, new BytesRef(value)));
  }

  private static void searched(Document document, IndexField field, List<String> texts) {
    for (String any : texts) {
      String text = Analysis.wellFormed(any);
      document.add(new Field(field.key(), text, SEARCHED));
      document.add(new Field(Analysis.WORDS, text, SPELT));
    }
  }

  private static String shown(SearchedText page, MarkdownText body) {
    return Stream.of(
            Stream.of(page.summary()),
            body.blocks().stream(),
            page.said().stream(),
            page.causes().stream(),
            page.more().stream())
        .flatMap(lines -> lines)
        .map(line -> line.replaceAll("\\s+", " ").strip())
        .filter(line -> !line.isEmpty())
        .reduce(new StringBuilder(), PageDocuments::line, StringBuilder::append)
        .toString();
  }

  private static StringBuilder line(StringBuilder lines, String line) {
    return (lines.length() == 0 ? lines : lines.append('\n')).append(line);
  }
}
