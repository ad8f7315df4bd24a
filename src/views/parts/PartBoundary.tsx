import { Component, type ReactNode } from 'react';
import { Callout } from './Callout';
import styles from './parts.module.css';

interface PartBoundaryProps {
  /** after each failure, before it is tried again */
  again?: () => void;
  /** what stands in its place, below the sentence */
  instead?: ReactNode;
  children: ReactNode;
}

/**
 * Keeps a part of the page that cannot be loaded, or fails, from taking the page and what was typed with it. It is tried
 * again when asked, and when another place is gone to.
 */
export class PartBoundary extends Component<PartBoundaryProps, { failedAt: string | null }> {
  override state = { failedAt: null };

  static getDerivedStateFromError() {
    return { failedAt: window.location.hash };
  }

  override componentDidUpdate() {
    if (this.state.failedAt !== null && this.state.failedAt !== window.location.hash) this.tryAgain();
  }

  /** At once, so that it is tried anew also where this boundary has gone meanwhile. */
  override componentDidCatch() {
    this.props.again?.();
  }

  private readonly tryAgain = () => this.setState({ failedAt: null });

  override render() {
    const { instead, children } = this.props;
    if (this.state.failedAt === null) return children;
    return (
      <>
        {instead}
        <div role="alert" className={styles.notLoaded}>
          <Callout weight="bad">
            <p>
              This part of the page could not be loaded or has failed. Nothing that was typed is lost. Try again, with a
              connection if there is none; a newer version may have come meanwhile, then load the page again.
            </p>
            <div className={styles.tries}>
              <button type="button" onClick={this.tryAgain}>
                Try again
              </button>
              <button type="button" onClick={() => window.location.reload()}>
                Load the page again
              </button>
            </div>
          </Callout>
        </div>
      </>
    );
  }
}
