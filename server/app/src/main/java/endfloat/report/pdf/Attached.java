package endfloat.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Calendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * The record that a PDF was made from, inside it.
 *
 * @param name of the file
 * @param json its bytes, kept as they are
 */
public record Attached(String name, byte[] json) {

  /** As ISO 19005-3, 6.8 and ISO 32000-2, 14.13 ask: in the name tree and associated as source. */
  void to(PDDocument document) throws IOException {
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(json), COSName.FLATE_DECODE);
    file.setSubtype("application/json");
    file.setSize(json.length);
    Calendar now = Calendar.getInstance();
    file.setCreationDate(now);
    file.setModDate(now);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(name);
    specification.setFileUnicode(name);
    specification.setFileDescription("The record that this report was made from");
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    specification.getCOSObject().setName("AFRelationship", "Source");
    PDEmbeddedFilesNameTreeNode files = new PDEmbeddedFilesNameTreeNode();
    files.setNames(Map.of(name, specification));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(files);
    document.getDocumentCatalog().setNames(names);
    COSArray associated = new COSArray();
    associated.add(specification);
    document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
  }
}
