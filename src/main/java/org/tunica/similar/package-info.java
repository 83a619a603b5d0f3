/**
 * Finds the past segments most like one of a case and says why.
 *
 * <p>In go a case and a case base; out comes {@link org.tunica.similar.SimilarCases}. Two segments are compared attribute by
 * attribute as knowledge/similarity.yaml says ({@link org.tunica.similar.Similarity}); what is not known of both counts neither
 * for nor against. {@link org.tunica.similar.CaseLibrary} holds the past segments and finds the nearest exactly, by segment, by
 * the words of the notes, or both. {@link org.tunica.similar.PastSigns} tells when hardly any is like one, or those that are
 * speak against what is ranked first. It informs: nothing here changes a ranking.
 *
 * <p>May import casefile, knowledge, physics, plan (the record the advice shows), session (positions), treatment, pastcases,
 * outcomes.
 *
 * <p>Decisions. The index is sorted by a coarse signature, each bucket has an upper bound, and what cannot enter the nearest is
 * skipped; weights are looked at when asking, so other weights need no other index. A past segment of which too little is known
 * in common is counted, not listed.
 */
@NullMarked
package org.tunica.similar;

import org.jspecify.annotations.NullMarked;
