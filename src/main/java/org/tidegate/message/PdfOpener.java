package org.tidegate.message;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.tidegate.message.Attachment.Container;

/** The pictures that the pages of a PDF show, as they are embedded. */
final class PdfOpener {

    /** A decoded picture of more pixels than this is left out; JPEGs are handed on undecoded whatever their size. */
    private static final long MOST_PIXELS = 40_000_000;

    private final FileOpener files;
    private int images;

    PdfOpener(FileOpener files) {
        this.files = files;
    }

    void open(String path, byte[] content, int depth) throws IOException {
        try (PDDocument document = Loader.loadPDF(content)) {
            int number = 0;
            for (PDPage page : document.getPages()) {
                if (++number > files.limits().pdfPages()) {
                    files.problem(
                            Problem.Kind.OVER_LIMIT,
                            path,
                            "A PDF with more pages than the limit; the rest was not looked at.");
                    return;
                }
                page(page.getResources(), path + "/page-" + number, depth);
            }
        } catch (InvalidPasswordException e) {
            files.problem(Problem.Kind.ENCRYPTED, path, "A PDF with a password: nobody here can look inside.");
        }
    }

    private void page(PDResources resources, String path, int depth) throws IOException {
        if (resources == null) {
            return;
        }
        int onPage = 0;
        for (COSName name : resources.getXObjectNames()) {
            if (!resources.isImageXObject(name)) {
                continue;
            }
            if (++images > files.limits().pdfImages()) {
                files.problem(
                        Problem.Kind.OVER_LIMIT,
                        path,
                        "A PDF with more pictures than the limit; the rest was not looked at.");
                return;
            }
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDImageXObject image) {
                image(image, path + "/image-" + onPage++, depth);
            }
        }
    }

    private void image(PDImageXObject image, String path, int depth) throws IOException {
        if ("jpg".equals(image.getSuffix())) {
            byte[] jpeg = image.getStream()
                    .createInputStream(java.util.List.of("DCTDecode", "DCT"))
                    .readAllBytes();
            files.open(path, Optional.empty(), "image/jpeg", Container.PDF, false, jpeg, depth + 1);
        } else if ((long) image.getWidth() * image.getHeight() <= MOST_PIXELS) {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(image.getImage(), "png", png);
            files.open(path, Optional.empty(), "image/png", Container.PDF, false, png.toByteArray(), depth + 1);
        } else {
            files.problem(Problem.Kind.OVER_LIMIT, path, "A picture in a PDF with more pixels than the limit.");
        }
    }
}
