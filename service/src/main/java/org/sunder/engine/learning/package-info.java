/**
 * From outcomes of tests to the correction of the charge model: exact Bayesian inference on a tree, without random numbers.
 *
 * <p>Three rooms: {@code model} holds what was observed and what is believed before ({@link
 * org.sunder.engine.learning.model.Trial}, {@link org.sunder.engine.learning.model.FleetLog}, {@link
 * org.sunder.engine.learning.model.Priors}); {@code quadrature} holds grids, rules and kernels that know nothing of rockets;
 * {@code posterior} passes messages and answers ({@link org.sunder.engine.learning.posterior.FleetModel}, {@link
 * org.sunder.engine.learning.posterior.LeafPosterior}). Only {@code posterior} uses {@code quadrature}.
 *
 * <h2>One trial's way</h2>
 *
 * <p>The model. A setup has a log correction c = μ + u + v + w of the fleet's mean μ, its airframe's u ~ N(0, τₐ²), its
 * joint's v ~ N(0, τⱼ²) and its own w ~ N(0, τₛ² + sₓ²). A trial at log ratio x = ln(charge / handbook charge) has the latent
 * strength z = x − c + σε with ε ~ N(0, 1), and its outcome is none for z &lt; 0, partial for 0 ≤ z &lt; δ, separated for z ≥ δ
 * (ordered probit). With the lapse λ it says nothing:
 *
 * <pre>  p(outcome | c) = (1 − λ) · P(outcome | z) + λ/3,   P(separated) = Φ((x − c − δ)/σ)</pre>
 *
 * <ol>
 *   <li>Hyperparameters (σ, δ, τₛ, τⱼ, τₐ) are nodes of quadrature rules with their prior weights; c and μ live on grids.
 *   <li>Upward pass ({@code UpwardPass}): at each node the setup's likelihood is the product of its trials' p; it goes through
 *       a Gaussian kernel of √(τₛ² + sₓ²) to its joint, there it is multiplied by that of the joint's other setups, and so on by
 *       τⱼ to the airframe and by τₐ to μ.
 *   <li>At the root the logarithms of the airframes' messages add up: the log likelihood of the fleet's mean ({@code
 *       MeanLogLikelihood}), a sum from which one airframe can be taken away exactly.
 *   <li>Downward pass ({@code DownwardPass}): prior of μ times all other airframes' likelihood, through the kernel of τₐ, times
 *       the other joints' messages, through that of τⱼ, times the other setups', through that of √(τₛ² + sₓ²), times the
 *       setup's own likelihood; summed over the τ by weight and marginal likelihood.
 *   <li>What comes out is mass on (c, σ, δ): chances, quantiles and the charge for a target reliability are sums over it.
 * </ol>
 *
 * <h2>Above the flyer</h2>
 *
 * <p>Where several flyers are known, what their logs say of μ, σ and δ ({@code FlyerEvidence}) teaches what to believe of another
 * flyer before any test ({@code Pool}): a mixture of normals that stands in place of the independent priors.
 *
 * <h2>A small example</h2>
 *
 * <p>One joint alone (τₐ = τⱼ = τₛ = sₓ = 0), μ ~ N(0, 0.30²), σ = 0.10, δ = 0.15, λ = 0.02 all known; one trial at the handbook
 * charge, x = 0, separated. By hand, with s² = 0.10² + 0.30² = 0.10 and k = −0.15/√0.10 = −0.474342:
 *
 * <pre>
 *   Φ(k) = 0.317628, φ(k) = 0.356494
 *   evidence   0.98 · 0.317628 + 0.02/3 = 0.317942
 *   mean of c  −0.98 · 0.30²/√s² · φ(k) / 0.317942 = −0.312732
 * </pre>
 *
 * so one separated test at the handbook charge takes the correction's mean from 1 to about e^−0.31 = 0.73. {@code
 * WorkedExampleTest} computes the same.
 */
@NullMarked
package org.sunder.engine.learning;

import org.jspecify.annotations.NullMarked;
