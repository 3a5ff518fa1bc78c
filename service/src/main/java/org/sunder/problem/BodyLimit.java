package org.sunder.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterProperties;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Stops a body that is larger than anything the API takes, whether its length is declared or not. */
@Component
@Order(BodyLimit.AFTER_ACCESS)
class BodyLimit extends OncePerRequestFilter {

    static final int AFTER_ACCESS = SecurityFilterProperties.DEFAULT_FILTER_ORDER + 10;
    static final long LARGEST_BYTES = 256 * 1024L;
    static final long LARGEST_IMPORT = 20 * 1024 * 1024L;
    static final long LARGEST_PHOTO = 5 * 1024 * 1024L;
    static final String DETAIL = "The body may be 256 kB at most, a photo 5 MB, an import 20 MB.";

    private static final Pattern PHOTO = Pattern.compile("/api/ground-tests/[^/]+/photo");

    private final ProblemWriter problems;

    BodyLimit(ProblemWriter problems) {
        this.problems = problems;
    }

    /** Whether reading failed because the limit was reached. */
    static boolean exceeded(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof TooLarge) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long largest = largest(request.getRequestURI());
        if (request.getContentLengthLong() > largest) {
            problems.write(request, response, ProblemType.BODY_TOO_LARGE, DETAIL);
            return;
        }
        chain.doFilter(new Limited(request, largest), response);
    }

    private static long largest(String path) {
        if (path.equals("/api/import")) {
            return LARGEST_IMPORT;
        }
        return PHOTO.matcher(path).matches() ? LARGEST_PHOTO : LARGEST_BYTES;
    }

    private static final class TooLarge extends IOException {
        TooLarge() {
            super(DETAIL);
        }
    }

    private static final class Limited extends HttpServletRequestWrapper {

        private final long largest;
        private @Nullable ServletInputStream stream;

        Limited(HttpServletRequest request, long largest) {
            super(request);
            this.largest = largest;
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            ServletInputStream counted = stream;
            if (counted == null) {
                counted = new Counted(super.getInputStream(), largest);
                stream = counted;
            }
            return counted;
        }

        @Override
        public BufferedReader getReader() throws IOException {
            return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
        }
    }

    private static final class Counted extends ServletInputStream {

        private final ServletInputStream source;
        private final long largest;
        private long read;

        Counted(ServletInputStream source, long largest) {
            this.source = source;
            this.largest = largest;
        }

        @Override
        public int read() throws IOException {
            int b = source.read();
            count(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int n = source.read(buffer, offset, length);
            count(Math.max(n, 0));
            return n;
        }

        private void count(int n) throws IOException {
            read += n;
            if (read > largest) {
                throw new TooLarge();
            }
        }

        @Override
        public boolean isFinished() {
            return source.isFinished();
        }

        @Override
        public boolean isReady() {
            return source.isReady();
        }

        @Override
        public void setReadListener(ReadListener listener) {
            source.setReadListener(listener);
        }
    }
}
