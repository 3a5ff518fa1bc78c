package org.sunder.picture;

import io.nayuki.qrcodegen.QrCode;
import java.util.Locale;
import org.springframework.web.util.HtmlUtils;

/**
 * A text as a code that a camera reads (QR code, ISO/IEC 18004): always dark on light with the quiet zone that the standard asks
 * for, by day, by night and in print.
 */
public final class CodePicture {

    private static final int QUIET = 4; // modules, ISO/IEC 18004, 6.3.8

    private CodePicture() {}

    /** The picture of a text. */
    public static String of(String text, String words) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
        int size = code.size + 2 * QUIET;
        StringBuilder dark = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    dark.append(String.format(Locale.ROOT, "M%d %dh1v1h-1z", x + QUIET, y + QUIET));
                }
            }
        }
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"code\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">"
                        + "<path fill=\"#fff\" d=\"M0 0h%dv%dh-%dz\"/><path fill=\"#000\" shape-rendering=\"crispEdges\" d=\"%s\"/></svg>",
                size,
                size,
                HtmlUtils.htmlEscape(words, "UTF-8"),
                size,
                size,
                size,
                dark);
    }
}
