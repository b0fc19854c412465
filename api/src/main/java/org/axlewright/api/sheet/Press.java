package org.axlewright.api.sheet;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Sets HTML into a tagged PDF (PDF/UA-1, ISO 14289-1). It fetches nothing: what is not in the HTML and its drawings is not there. The
 * same HTML gives the same bytes.
 */
final class Press {

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    static {
        XRLog.setLoggingEnabled(false);
    }

    /**
     * Prints.
     *
     * @param html well-formed, with {@code <object type="drawing" data="n">} where the drawing of that place belongs
     * @param date of the document; null for none
     */
    byte[] print(String html, List<Drawing> drawings, @Nullable Instant date) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withHtmlContent(html, null)
                .usePdfUaAccessibility(true)
                .withProducer("Axlewright")
                .useFont(Typeface::regular, Typeface.FAMILY, REGULAR, FontStyle.NORMAL, true)
                .useFont(Typeface::bold, Typeface.FAMILY, BOLD, FontStyle.NORMAL, true)
                .useObjectDrawerFactory(new Easel(drawings))
                .useExternalResourceAccessControl(
                        (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                .toStream(bytes);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            PDDocumentInformation information = document.getDocumentInformation();
            GregorianCalendar calendar =
                    date == null ? null : GregorianCalendar.from(ZonedDateTime.ofInstant(date, ZoneOffset.UTC));
            information.setCreationDate(calendar);
            information.setModificationDate(calendar);
            document.setDocumentId(fingerprint(html));
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static long fingerprint(String html) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(html.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest).getLong();
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Puts each drawing into its place, as lines and not as an image. */
    private record Easel(List<Drawing> drawings) implements FSObjectDrawerFactory, FSObjectDrawer {

        @Override
        public boolean isReplacedObject(Element element) {
            return element.getAttribute("type").equals("drawing");
        }

        @Override
        public @Nullable FSObjectDrawer createDrawer(Element element) {
            return isReplacedObject(element) ? this : null;
        }

        @Override
        public @Nullable Map<Shape, String> drawObject(
                Element element,
                double x,
                double y,
                double width,
                double height,
                OutputDevice device,
                RenderingContext context,
                int dotsPerPixel) {
            Drawing drawing = drawings.get(Integer.parseInt(element.getAttribute("data")));
            device.drawWithGraphics(
                    (float) x,
                    (float) y,
                    (float) width / dotsPerPixel,
                    (float) height / dotsPerPixel,
                    graphics -> drawing.draw(graphics, width / dotsPerPixel, height / dotsPerPixel));
            return null;
        }
    }
}
