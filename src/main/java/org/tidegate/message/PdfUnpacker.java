package org.tidegate.message;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Pictures embedded in a PDF, page by page; a photo's own file is handed over untouched so that its records stay. */
final class PdfUnpacker implements Unpacker {

    /** Decoded pixels of one embedded picture that is not a file by itself; beyond, it is not decoded. */
    private static final long PIXELS = 60_000_000L;

    /** Longer ones are thinned out while they are decoded. */
    private static final int LONG_SIDE = 2_400;

    private static final int FORM_DEPTH = 4;

    /** Inflated bytes of one stream: a photo of 16 megapixels. */
    private static final long STREAM = 48L << 20;

    private static final long STREAMS = 8 * STREAM;

    private final Limits limits;

    PdfUnpacker(Limits limits) {
        this.limits = limits;
    }

    @Override
    public boolean opens(String type) {
        return type.equals("application/pdf");
    }

    @Override
    public void unpack(Attachment container, AttachmentCollector into) throws IOException {
        if (!PdfStreams.within(container.content(), STREAM, STREAMS)) {
            into.problem(Problem.Kind.OVER_LIMIT, container.path(), "The PDF inflates beyond what may be looked at.");
            return;
        }
        try (PDDocument document = Loader.loadPDF(container.content())) {
            Walk walk = new Walk(container.path(), into);
            int pages = Math.min(document.getNumberOfPages(), limits.pdfPages());
            for (int page = 0; page < pages; page++) {
                walk.page(document.getPage(page), page + 1);
            }
            if (pages < document.getNumberOfPages()) {
                into.problem(
                        Problem.Kind.OVER_LIMIT,
                        container.path(),
                        "Only the first " + pages + " pages were looked at.");
            }
        } catch (InvalidPasswordException e) {
            into.problem(Problem.Kind.ENCRYPTED, container.path(), "The PDF is protected by a password.");
        }
    }

    /** One walk through a document's pages; counts pictures over all of them. */
    private final class Walk {
        private final String path;
        private final AttachmentCollector into;
        private int images;
        private int onPage;

        Walk(String path, AttachmentCollector into) {
            this.path = path;
            this.into = into;
        }

        void page(PDPage page, int number) throws IOException {
            onPage = 0;
            resources(page.getResources(), path + "/page-" + number, 0);
        }

        private void resources(PDResources resources, String place, int depth) throws IOException {
            if (resources == null || depth > FORM_DEPTH) {
                return;
            }
            for (COSName name : resources.getXObjectNames()) {
                if (images >= limits.pdfImages()) {
                    into.problem(
                            Problem.Kind.OVER_LIMIT, path, "Only the first " + images + " pictures were looked at.");
                    return;
                }
                PDXObject object = resources.getXObject(name);
                if (object instanceof PDImageXObject image) {
                    images++;
                    image(image, place + "/image-" + onPage++);
                } else if (object instanceof PDFormXObject form) {
                    resources(form.getResources(), place, depth + 1);
                }
            }
        }

        private void image(PDImageXObject image, String place) throws IOException {
            List<COSName> filters = image.getStream().getFilters();
            boolean isFile = filters.size() == 1
                    && (filters.get(0).equals(COSName.DCT_DECODE)
                            || filters.get(0).equals(COSName.JPX_DECODE));
            if (isFile) {
                try (InputStream raw = image.getCOSObject().createRawInputStream()) {
                    into.addStream(place, Optional.empty(), Attachment.Container.PDF, raw);
                }
            } else if ((long) image.getWidth() * image.getHeight() > PIXELS) {
                into.tooLarge(place);
            } else {
                int step = Math.max(1, Math.max(image.getWidth(), image.getHeight()) / LONG_SIDE);
                drawn(image.getImage(null, step), place);
            }
        }

        private void drawn(BufferedImage image, String place) throws IOException {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(image, "png", png);
            into.addStream(
                    place, Optional.empty(), Attachment.Container.PDF, new ByteArrayInputStream(png.toByteArray()));
        }
    }
}
