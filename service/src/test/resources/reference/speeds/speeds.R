# Posteriors of two small fleets whose readings of speed differ in quality, by JAGS (Debian packages jags and r-cran-rjags).
# Usage: Rscript speeds.R [chains 10] [kept 40000] [thin 10] [fleets 1:2]; reads trials.csv and writes posterior-<fleet>.csv with
# means, quantiles and their Monte Carlo standard errors from the spread over chains.
suppressMessages(library(rjags))
args <- commandArgs(TRUE)
chains <- if (length(args) > 0) as.integer(args[1]) else 10L
kept <- if (length(args) > 1) as.integer(args[2]) else 40000L
thin <- if (length(args) > 2) as.integer(args[3]) else 10L
which <- if (length(args) > 3) eval(parse(text = args[4])) else 1:2
levels <- c(0.025, 0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95, 0.975)
trials <- read.csv("trials.csv")

posterior <- function(f) {
  d <- trials[trials$fleet == f, ]
  setups <- unique(d[c("airframe", "joint", "setup", "inputSd")])
  joints <- unique(setups[c("airframe", "joint")])
  key <- function(t, columns) do.call(paste, t[columns])
  setupOf <- match(key(d, c("airframe", "joint", "setup")), key(setups, c("airframe", "joint", "setup")))
  timed <- !is.na(d$metresPerSecond)
  data <- list(A = max(joints$airframe), J = nrow(joints), S = nrow(setups), N = sum(!timed), M = sum(timed),
    airframeOf = joints$airframe,
    jointOf = match(key(setups, c("airframe", "joint")), key(joints, c("airframe", "joint"))),
    inputSd = setups$inputSd, x = d$logRatio[!timed], setupOf = setupOf[!timed],
    y = match(d$outcome[!timed], c("none", "partial", "separated")),
    xSpeed = d$logRatio[timed], setupOfSpeed = setupOf[timed], logSpeed = log(d$metresPerSecond[timed]),
    sd = d$sd[timed], ones = rep(1, sum(timed)))
  start <- lapply(seq_len(chains), function(k)
    list(.RNG.name = "base::Mersenne-Twister", .RNG.seed = 1000 * f + k))
  m <- jags.model("model.jags", data, start, n.chains = chains, n.adapt = 3000, quiet = TRUE)
  update(m, 10000, progress.bar = "none")
  draws <- coda.samples(m, c("mu", "tauAirframe", "tauJoint", "tauSetup", "sigma", "delta", "bias", "cnew", "c", "x99"),
    kept * thin, thin = thin, progress.bar = "none")
  per <- lapply(draws, function(chain) rbind(colMeans(chain), apply(chain, 2, quantile, levels)))
  each <- simplify2array(per)
  value <- apply(each, 1:2, mean)
  error <- apply(each, 1:2, sd) / sqrt(chains)
  rhat <- gelman.diag(draws[, c("mu", "sigma", "delta", "bias")], multivariate = FALSE)
  node <- colnames(value)
  if (data$S == 1) node[node %in% c("c", "x99")] <- paste0(node[node %in% c("c", "x99")], "[1]") # as where there are more
  out <- data.frame(fleet = f, node = node, round(t(value), 5), round(t(error), 5))
  names(out) <- c("fleet", "node", "mean", paste0("q", levels), "meanError", paste0("error", levels))
  write.csv(out, sprintf("posterior-%d.csv", f), row.names = FALSE, quote = FALSE)
  cat(sprintf("fleet %d: %d airframes, %d setups, %d speeds, largest Gelman-Rubin %.4f, %.0f s\n", f, data$A, data$S,
    data$M, max(rhat$psrf[, 2]), proc.time()[1]))
}
for (f in which) posterior(f)
