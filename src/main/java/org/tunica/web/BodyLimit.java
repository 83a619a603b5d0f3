package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.server.ResponseStatusException;
import org.tunica.casefile.JsonText;

/** No body larger than any file this program reads, whether its length is announced or not. */
@Component
final class BodyLimit extends OncePerRequestFilter {
    /** A form writes each sign that is no letter with three. */
    private static final int LARGEST_FORM_BYTES = 3 * JsonText.LARGEST_BYTES;

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        int most = most(request);
        if (request.getContentLengthLong() > most) {
            Refusals.write(request, response, HttpStatus.CONTENT_TOO_LARGE, "at most " + most + " bytes are read");
            return;
        }
        chain.doFilter(new Bounded(request, most), response);
    }

    /** What a record system sends of a patient is larger than a file of ours. */
    private static int most(HttpServletRequest request) {
        boolean record =
                Refusals.aboutRecords(request) || request.getRequestURI().startsWith("/cds-services/");
        if (request.getRequestURI().equals("/cases/import")) {
            return LARGEST_FORM_BYTES;
        }
        return record ? JsonText.LARGEST_RECORD_BYTES : JsonText.LARGEST_BYTES;
    }

    private static final class Bounded extends HttpServletRequestWrapper {
        private final int most;

        Bounded(HttpServletRequest request, int most) {
            super(request);
            this.most = most;
        }

        @Override
        public ServletInputStream getInputStream() throws IOException {
            return new BoundedStream(super.getInputStream(), most);
        }
    }

    private static final class BoundedStream extends ServletInputStream {
        private final ServletInputStream stream;
        private final int most;
        private long read;

        BoundedStream(ServletInputStream stream, int most) {
            this.stream = stream;
            this.most = most;
        }

        @Override
        public int read() throws IOException {
            int next = stream.read();
            count(next < 0 ? 0 : 1);
            return next;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int count = stream.read(bytes, from, length);
            count(Math.max(0, count));
            return count;
        }

        private void count(int more) {
            read += more;
            if (read > most) {
                throw new ResponseStatusException(HttpStatus.CONTENT_TOO_LARGE);
            }
        }

        @Override
        public boolean isFinished() {
            return stream.isFinished();
        }

        @Override
        public boolean isReady() {
            return stream.isReady();
        }

        @Override
        public void setReadListener(ReadListener listener) {
            stream.setReadListener(listener);
        }
    }
}
