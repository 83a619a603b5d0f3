/**
 * Past segments on a search engine that many share ("OpenSearch", 2.19), for a region that has outgrown one machine.
 *
 * <p>In go past cases as rows ({@link org.tunica.similar.SegmentRow}); out come the same answers as from the index beside the
 * cases: {@link org.tunica.cluster.Cluster} loads, checks and opens. The engine adds up, for each segment, weights of the marks
 * it shares with the question, which is never less than its true sum; what it lists is compared anew by the same class as
 * everywhere ({@link org.tunica.similar.Question#likeness}), and more is fetched until nothing unseen can belong among the best.
 *
 * <p>May import casefile, knowledge, physics, pastcases, similar.
 *
 * <p>Decisions. Home of the engine's client, of which the generic side alone is used: requests are trees of our own JSON, so one
 * mapper serves the program. An index is loaded beside the one in use and takes its place in one step, so nobody sees half of
 * one. Cases travel with their segments: a replica needs nothing but the engine. Without TLS only this machine is spoken to.
 */
@NullMarked
package org.tunica.cluster;

import org.jspecify.annotations.NullMarked;
